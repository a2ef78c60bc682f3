/** Electrodes: what they are called, how many, how long they last, kept dry. */
import type { Scene } from '../scene.ts';

export default {
  'electrode-use': [
    {
      told: [
        'A job needs {mass} of weld metal. Your {diameter} electrodes, {electrodeLength} long, leave {stub} stubs. Of their weight {coatingFraction} is coating, and of what burns off {recovery} ends in the weld. Steel weighs {density}.',
        'You burn {diameter} electrodes of {electrodeLength} down to {stub}. Coating makes {coatingFraction} of their weight, and {recovery} of what burns off becomes weld metal; steel weighs {density}. The job takes {mass}.',
      ],
      asked: {
        electrodes: [
          'How many electrodes are that, rounded up?',
          'How many electrodes do you take?',
        ],
        depositPerElectrode: 'How much weld metal does one electrode leave?',
      },
      values: {
        mass: {
          us: ['0.5 lb', '0.8 lb', '1 lb', '1.5 lb', '2 lb'],
          metric: ['0.2 kg', '0.4 kg', '0.5 kg', '0.7 kg', '1 kg'],
        },
      },
    },
  ],
  'arc-time': [
    {
      told: [
        'A job needs {mass} of weld metal. You lay {depositionRate} while the arc burns, and it burns {operatingFactor} of the time.',
        'You deposit {depositionRate} of arc time. The operating factor is {operatingFactor}, and {mass} of metal is to be laid.',
      ],
      asked: {
        arcHours: 'How long does the arc burn?',
        clockHours: ['How long does it take by the clock?', 'How much shop time is that?'],
      },
      values: {
        mass: {
          us: ['0.5 lb', '1 lb', '1.5 lb', '2 lb', '3 lb'],
          metric: ['0.25 kg', '0.5 kg', '0.75 kg', '1 kg', '1.5 kg'],
        },
        depositionRate: {
          us: ['1.8 lb/h', '2 lb/h', '2.4 lb/h', '3 lb/h'],
          metric: ['0.8 kg/h', '0.9 kg/h', '1.1 kg/h', '1.4 kg/h'],
        },
        operatingFactor: ['0.15', '0.2', '0.25', '0.3'],
      },
    },
  ],
  'electrode-classification': [
    {
      told: ['On the electrode is printed {classification}.', 'A can is marked {classification}.'],
      asked: {
        tensileStrength: 'How strong is its weld metal at least?',
        fNumber: 'To which F-number does it belong?',
        lowHydrogen: 'Has it a low-hydrogen covering?',
      },
      values: { classification: ['E6010', 'E6011', 'E6013', 'E7014', 'E7018', 'E7024'] },
    },
  ],
  'oven-load': [
    {
      told: [
        'From {firstArc} to {lastArc} {booths} booths weld with {classification}; a booth burns {perHour} electrodes an hour, handed out for {issueEvery} at a time. Add {spare} spare. In the oven are {inOven} dry ones, and a container holds {electrodesPerContainer}.',
        'Tonight {booths} booths burn {perHour} {classification} an hour each, from {firstArc} to {lastArc}; you hand out for {issueEvery} at a time. The oven has {inOven} dry ones; containers hold {electrodesPerContainer}; {spare} is added as spare.',
      ],
      asked: {
        electrodes: 'How many electrodes does the evening take, spare included?',
        containers: 'How many containers do you open?',
      },
      values: {
        classification: ['E7018'],
        booths: ['8', '10', '12', '14'],
        perHour: ['5', '6', '8'],
        firstArc: [{ typed: '18:15', said: '18:15' }],
        lastArc: [
          { typed: '20:15', said: '20:15' },
          { typed: '21:15', said: '21:15' },
        ],
        spare: ['20 percent', '25 percent'],
        issueEvery: ['1 h'],
        inOven: ['30', '60', '90'],
        electrodesPerContainer: ['140'],
        ovenHolds: ['1000'],
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;

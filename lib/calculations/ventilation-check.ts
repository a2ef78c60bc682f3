import { defineProcedure, type Printed, type Reason } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { convert } from '../units.ts';

const osha = (at: string) => ({ source: 'osha-1910-252', at, known: 'read' }) as const;

/** As the rule prints them in both systems. */
const least = {
  spacePerWelder: { us: 10_000, metric: 284 },
  ceiling: { us: 16, metric: 5 },
  airPerWelder: { us: 2000, metric: 57 },
  captureVelocity: { us: 100, metric: 30 },
} as const;

const under = (size: Printed, limit: PrintedFigure): boolean => size.value < limit[size.system];

export default defineProcedure({
  title: 'Ventilation',
  summary: 'What a welding shop needs at the arc, and what the old room rule asks for on top.',
  inputs: {
    welders: {
      label: 'Welders at work at once',
      symbol: 'n',
      unit: '1',
      whole: true,
      limits: { min: 1, max: 500, why: 'count those who may have an arc burning at one time' },
      example: '14',
      obtain: 'The number of booths.',
    },
    roomVolume: {
      label: 'Volume of the room',
      symbol: 'V',
      printed: { us: 'ft3', metric: 'm3' },
      limits: { min: 100, max: 50_000_000, why: 'no room is smaller or larger' },
      example: { us: '54000', metric: '1500' },
      obtain: 'Length by width by height, without the store room.',
    },
    ceilingHeight: {
      label: 'Height of the ceiling',
      symbol: 'h',
      printed: { us: 'ft', metric: 'm' },
      limits: { min: 5, max: 200, why: 'no room is lower or higher' },
      example: { us: '15', metric: '4.5' },
      obtain: 'Floor to the lowest large surface overhead.',
    },
    crossFlow: {
      label: 'Air across the room',
      choices: ['obstructed', 'free'],
      example: 'obstructed',
      obtain: 'Booth walls, curtains, balconies and low corners obstruct it.',
    },
    captureVelocity: {
      label: 'Air speed measured at the arc, hood in its place',
      symbol: 'v',
      printed: { us: 'ft/min', metric: 'm/min' },
      limits: { min: 0, max: 5000, why: 'no hood draws harder' },
      optional: true,
      example: { us: '110', metric: '34' },
      obtain: 'Vane or hot-wire meter where the arc will be, no arc burning, every hood open.',
    },
  },
  outputs: {
    first: { label: 'First', words: ['local exhaust at each booth'] },
    captureNeeded: {
      label: 'Air speed that the hood draws at the arc, at least',
      printed: { us: 'ft/min', metric: 'm/min' },
    },
    capture: {
      label: 'Measured air speed',
      words: ['strong enough', 'too weak', 'not measured'],
    },
    room: {
      label: 'Room rule',
      words: [
        'asks for mechanical ventilation too',
        'asks for nothing more; exhaust at the arc stays',
      ],
    },
    spacePerWelder: { label: 'Room for each welder', unit: 'ft3', digits: 2 },
    generalFlow: {
      label: 'Fresh air, if the room’s ventilation had to do it without hoods',
      printed: { us: 'ft3/min', metric: 'm3/min' },
    },
  },
  beware: [
    'The room rule is older than what is known about manganese in welding fume. Fume is judged by air samples at the welder’s collar, under the hood; ask an industrial hygienist.',
    'Keep your head out of the plume whatever the fan does. Coated, plated, painted or unknown metal is not welded here at all.',
    'Closed spaces need a permit, air tests and a watch: nobody welds there in a course.',
  ],
  cite: [osha('(c)(2) and (c)(3)')],
  compute({ welders, roomVolume, ceilingHeight, crossFlow, captureVelocity }) {
    const share: Printed = { ...roomVolume, value: roomVolume.value / welders };
    const tests = [
      {
        met: under(share, least.spacePerWelder),
        text: 'less than {10000 ft3|284 m3} for each welder',
      },
      { met: under(ceilingHeight, least.ceiling), text: 'a ceiling under {16 ft|5 m}' },
      { met: crossFlow === 'obstructed', text: 'air across the room obstructed' },
    ];
    const met = tests.filter((test) => test.met).map(({ text }) => text);
    const because: Reason[] = [
      {
        kind: 'rule',
        text: 'At each booth a hood that can be moved, as near the arc as the work lets it, drawing at least {100 ft/min|30 m/min} across the arc.',
        cite: osha('(c)(3)'),
      },
      {
        kind: 'rule',
        text:
          met.length > 0
            ? `The room rule asks for mechanical ventilation by any one of these; here: ${met.join('; ')}.`
            : 'The room rule is not reached: the room is large, high and open. Fume rises past a face all the same, so exhaust at the arc stays.',
        cite: osha('(c)(2)(i)'),
      },
      {
        kind: 'rule',
        text: 'Without local hoods that is {2000 ft3/min|57 m3/min} for each welder, which has to be warmed in winter: a hood at each arc is cheaper and better.',
        cite: osha('(c)(2)(ii)'),
      },
    ];
    const weak = captureVelocity && under(captureVelocity, least.captureVelocity);
    if (weak)
      because.push({
        kind: 'caution',
        text: 'Too weak: bring the hood nearer, shut idle hoods, look for a clogged filter. Until it draws, that booth stays dark.',
      });
    return {
      first: 'local exhaust at each booth',
      captureNeeded: least.captureVelocity,
      capture: captureVelocity === undefined ? 'not measured' : weak ? 'too weak' : 'strong enough',
      room:
        met.length > 0
          ? 'asks for mechanical ventilation too'
          : 'asks for nothing more; exhaust at the arc stays',
      spacePerWelder: share.system === 'us' ? share.value : convert(share.value, 'm3', 'ft3'),
      generalFlow: {
        us: least.airPerWelder.us * welders,
        metric: least.airPerWelder.metric * welders,
      },
      because,
    };
  },
});

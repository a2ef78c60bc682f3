import type { NamedReading } from '../../lib/section/fillet-readings.ts';
import { printMeasured } from '../../lib/section/measured-text.ts';
import { printFraction } from '../../lib/text/inches.ts';
import { convert, type System } from '../../lib/units.ts';

interface Props {
  readings: readonly NamedReading[];
  passes: number;
  system: System;
  /** The sample's true sizes, to stand beside what was measured. */
  trueSizes: Readonly<Record<string, number>> | undefined;
}

/** Every reading with what it may be off; lengths on a rule as well, for a reader of inches. */
export default function Readings({ readings, passes, system, trueSizes }: Props) {
  const truth = (reading: NamedReading) => {
    const value = trueSizes?.[reading.name];
    return value === undefined ? undefined : (
      <small class="section-truth">
        true: {printMeasured({ value, uncertainty: 0 }, reading.unit, system)}
      </small>
    );
  };
  return (
    <div class="scroll">
      <table class="section-table">
        <caption>What was measured</caption>
        <thead>
          <tr>
            <th scope="col">Reading</th>
            <th scope="col">Value, give or take</th>
          </tr>
        </thead>
        <tbody>
          {readings.map((reading) => (
            <tr key={reading.name}>
              <th scope="row">{reading.label}</th>
              <td>
                {printMeasured(reading, reading.unit, system)}
                {onRule(reading, system)}
                {truth(reading)}
              </td>
            </tr>
          ))}
          {passes > 0 && (
            <tr>
              <th scope="row">Passes counted</th>
              <td>{passes}</td>
            </tr>
          )}
        </tbody>
      </table>
    </div>
  );
}

/** The nearest thirty-second, where the uncertainty still tells one from the next. */
function onRule({ name, value }: NamedReading, system: System) {
  if (system !== 'us' || !/^(leg[AB]|throat|actualThroat|thickness|capWidth)$/.test(name))
    return null;
  const nearest = printFraction(convert(value, 'mm', 'in'), 32);
  return <small class="section-truth">near {nearest} in on the rule</small>;
}

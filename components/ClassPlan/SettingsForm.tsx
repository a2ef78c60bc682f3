import type { Input } from '../../lib/calculation.ts';
import {
  metalSettings,
  plateSides,
  rodSettings,
  type SettingName,
  settings,
  sides,
  termSettings,
  workSettings,
} from '../../lib/class/settings.ts';
import type { ClassPlan } from '../../lib/files/class-plan.ts';
import { type System, unitFor, unitSign } from '../../lib/units.ts';
import { boxText } from '../Calculator/entries.ts';
import TypedBox from './TypedBox.tsx';

interface Props {
  plan: ClassPlan;
  problems: ReadonlyMap<string, string>;
  onSetting(name: SettingName, text: string): void;
}

const groups: readonly (readonly [title: string, names: readonly SettingName[], open?: true])[] = [
  ['Class and evenings', Object.keys(termSettings) as SettingName[], true],
  ['Stock and saw', Object.keys(metalSettings) as SettingName[]],
  ['Spare electrodes', Object.keys(rodSettings) as SettingName[]],
  ['Bench', Object.keys(workSettings) as SettingName[]],
];

/** What holds for the whole plan. */
export default function SettingsForm({ plan, problems, onSetting }: Props) {
  return (
    <>
      {groups.map(([title, names, open]) => (
        <details class="plan-group" open={open} key={title}>
          <summary>
            <h3>{title}</h3>
          </summary>
          <div class="plan-boxes">
            {names.map((name) => (
              <TypedBox
                key={name}
                id={`plan-${name}`}
                label={settings[name].label}
                unit={unitText(settings[name], plan.units)}
                value={shownSetting(plan, name)}
                hint={settings[name].obtain}
                problem={problems.get(name)}
                onText={(text) => onSetting(name, text)}
              />
            ))}
            {names.includes('kerf') && (
              <div class="plan-box">
                <label for="plan-plateSides">{plateSides.label}</label>
                <select
                  id="plan-plateSides"
                  value={plan.settings.plateSides || plateSides.example}
                  onChange={(event) => onSetting('plateSides', event.currentTarget.value)}
                >
                  {sides.map((it) => (
                    <option key={it} value={it}>
                      {it}
                    </option>
                  ))}
                </select>
                <p class="field-range">{plateSides.obtain}</p>
              </div>
            )}
          </div>
        </details>
      ))}
    </>
  );
}

/** What is typed, or the standard value in the plan's units. */
function shownSetting({ settings: typed, units }: ClassPlan, name: SettingName): string {
  const { example } = settings[name];
  return typed[name] || (typeof example === 'string' ? example : example[units]);
}

function unitText(input: Input, system: System): string {
  if (!('unit' in input)) return '';
  const sign = unitSign(unitFor(input.unit, system));
  return sign === 'h' || sign === 'min' ? '' : sign;
}

/** The plan for a reader of the other system: lengths that can be read are converted. */
export function inUnits(plan: ClassPlan, system: System): ClassPlan {
  if (plan.units === system) return plan;
  const typed = { ...plan.settings };
  for (const name of Object.keys(typed) as SettingName[]) {
    const input = settings[name];
    if (typed[name] !== '' && 'unit' in input && input.unit === 'in')
      typed[name] = boxText(input, typed[name], plan.units, system);
  }
  return { ...plan, units: system, settings: typed };
}

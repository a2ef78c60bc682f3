/** The booth page and its address are inverses, a rotation of tasks included. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  deskQuery,
  readRotation,
  readTask,
  type Task,
  taskQuery,
} from '../../../components/Booth/desk-address.ts';
import { taskBooths } from '../../../components/Booth/task-booths.ts';

const tasks: fc.Arbitrary<Task> = fc.record({
  pick: fc.constantFrom('exercise/fillet-2f', 'lesson/open-root', ''),
  places: fc.constantFrom('', '7', '7-10, 12'),
  group: fc.constantFrom('', 'B', 'Evening & day'),
  note: fc.constantFrom('', 'Slow = good, 100 % "sure" <b>', '50 % über ±5'),
  units: fc.constantFrom('' as const, 'us' as const, 'metric' as const),
  typed: fc.constantFrom({}, { current: '130A', leg: '3/8in' }, { overlap: '40' }),
});

describe('the address of the booth page', () => {
  it('gives back the task and the rotation', () => {
    fc.assert(
      fc.property(tasks, fc.array(tasks, { maxLength: 5 }), (task, others) => {
        const rotation = others.map(taskQuery);
        const query = deskQuery(task, rotation);
        expect(readTask(query)).toEqual({ task, problems: [] });
        expect(readRotation(query)).toEqual(rotation);
        expect(readRotation(query).map((one) => readTask(one).task)).toEqual(others);
      }),
    );
  });
  it('takes the short link of an exercise page', () => {
    expect(readTask('exercise=fillet-2f').task.pick).toBe('exercise/fillet-2f');
  });
});

describe('a task', () => {
  const task: Task = {
    pick: 'exercise/fillet-2f',
    places: '7-8',
    group: ' B ',
    note: '',
    units: '',
    typed: { current: '130', leg: 'x' },
  };
  it('is one booth for each number, with what could be read', () => {
    const { booths, problems } = taskBooths(task, 'us');
    expect(booths).toEqual(
      ['7', '8'].map((place) => ({
        exercise: 'fillet-2f',
        group: 'B',
        place,
        numbers: { current: '130A' },
      })),
    );
    expect(problems.leg).toMatch(/needs a number/);
  });
});

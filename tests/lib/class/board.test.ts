import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boardExercises, demoBoard, demoDay } from '../../../content/demo-board.ts';
import { boardCsv, readBoardCsv } from '../../../lib/class/board-csv.ts';
import { mergeRecord } from '../../../lib/class/merge-record.ts';
import { standingOf } from '../../../lib/class/standing.ts';
import { stillAhead } from '../../../lib/class/still-ahead.ts';
import { canBurn, suggestBooths } from '../../../lib/class/suggest-booths.ts';
import {
  type BoardBooth,
  type BoardLearner,
  type ClassBoard,
  classBoard,
  newLearner,
} from '../../../lib/files/class-board.ts';
import { readFile, writeFile } from '../../../lib/files/file-kind.ts';
import { type Coupon, emptyRecord } from '../../../lib/files/learner-record.ts';

const exercises = await boardExercises();
const demo = demoBoard();
const standing = (learner: Partial<BoardLearner>, today = demoDay) =>
  standingOf({ ...newLearner('1'), ...learner }, exercises, 'AWS D1.1', today);
const coupon = (exercise: string, result: Coupon['result'], on = '2026-03-02'): Coupon => ({
  exercise,
  on,
  result,
  readings: [],
  grader: '',
  note: '',
});

describe('where a learner stands', () => {
  it('is the first exercise of the course that is not passed', () => {
    expect(standing({}).next?.slug).toBe(exercises[0]?.slug);
    const passed = exercises.slice(0, 3).map(({ slug }) => coupon(slug, 'passed'));
    expect(standing({ coupons: passed }).next).toBe(exercises[3]);
    const waits = [...passed, coupon(exercises[3]?.slug ?? '', 'waiting')];
    expect(standing({ coupons: waits }).next).toBe(exercises[3]);
  });

  it('is what was set by hand, and goes on from there once that is passed', () => {
    const at = exercises.findIndex(({ slug }) => slug === 'fillet-2f');
    expect(standing({ at: 'fillet-2f' }).place).toBe(at);
    expect(standing({ at: 'fillet-2f', coupons: [coupon('fillet-2f', 'passed')] }).place).toBe(
      at + 1,
    );
  });

  it('counts minutes missed less those caught up, never below none', () => {
    const absences = [{ on: '2026-03-03', minutes: 165 }];
    expect(standing({ absences, caughtUp: 60 }).catchUp).toBe(105);
    expect(standing({ absences, caughtUp: 500 }).catchUp).toBe(0);
  });

  it('is ready for a test plate once it is next, and not while one waits for its grade', () => {
    expect(standing({ at: 'groove-3g-one-inch' }).readyFor?.slug).toBe('groove-3g-one-inch');
    expect(standing({ at: 'groove-3g' }).readyFor).toBeUndefined();
    const waits = [coupon('groove-3g-one-inch', 'waiting')];
    expect(standing({ at: 'groove-3g-one-inch', coupons: waits }).readyFor).toBeUndefined();
  });

  it('follows the six months from the test, or from the last weld that somebody saw', () => {
    expect(standing({ tested: '2025-10-01' }).alive).toEqual({ until: '2026-04-01', daysLeft: 6 });
    expect(standing({ tested: '2025-10-01', lastWelded: '2026-02-01' }).alive?.until).toBe(
      '2026-08-01',
    );
    expect(standing({ tested: '2025-01-01' }).alive?.daysLeft).toBeLessThan(0);
    expect(standing({}).alive).toBeUndefined();
  });

  it('follows the six months from a graded coupon too, and tells a weld that came too late', () => {
    const seen = standing({ tested: '2025-10-01', coupons: [coupon('flat-bead', 'passed')] });
    expect(seen.alive?.until).toBe('2026-09-02');
    // A day that lies after today keeps nothing alive yet.
    const ahead = [coupon('flat-bead', 'waiting', '2026-12-01')];
    expect(standing({ tested: '2025-10-01', coupons: ahead }).alive?.until).toBe('2026-04-01');
    const late = standing({ tested: '2025-01-01', lastWelded: '2026-03-01' }).alive;
    expect(late).toMatchObject({ until: '2025-07-01', late: '2026-03-01' });
  });

  it('looks at the coupons of the exercise in question, and at uses up to today', () => {
    const other = [coupon('flat-bead', 'waiting')];
    expect(standing({ at: 'groove-3g-one-inch', coupons: other }).readyFor?.slug).toBe(
      'groove-3g-one-inch',
    );
    const today = [coupon('flat-bead', 'passed', demoDay)];
    const alive = (learner: Partial<BoardLearner>) => standing(learner).alive;
    expect(alive({ tested: '2025-10-01', coupons: today })).toMatchObject({ daysLeft: 184 });
    expect(alive({ tested: '2025-10-01', lastWelded: '' })).not.toHaveProperty('late');
    const repeats = [
      coupon('fillet-2f', 'repeat'),
      coupon('fillet-2f', 'waiting'),
      coupon('flat-bead', 'repeat'),
    ];
    expect(standing({ at: 'fillet-2f', coupons: repeats }).repeats).toBe(1);
  });

  it('lets nobody strike whose gate is not signed, whatever else is known', () => {
    expect(standing({ gate: '2026-01-06' }).mayStrike).toBe(true);
    expect(standing({ gate: '' }).mayStrike).toBe(false);
    const { gate: _, ...old } = newLearner('1');
    expect(standingOf(old, exercises, 'AWS D1.1', demoDay).mayStrike).toBe(false);
  });

  it('has nothing next when all is passed', () => {
    const all = exercises.map(({ slug }) => coupon(slug, 'passed'));
    expect(standing({ coupons: all })).toMatchObject({
      next: undefined,
      place: exercises.length,
      repeats: 0,
      readyFor: undefined,
    });
  });

  it('counts the repeats of the next exercise alone', () => {
    const [one, two] = exercises.map(({ slug }) => slug);
    const coupons = [
      coupon(one ?? '', 'passed'),
      coupon(one ?? '', 'repeat'),
      coupon(two ?? '', 'repeat'),
    ];
    expect(standing({ coupons }).repeats).toBe(1);
    expect(standing({ coupons }).waiting).toEqual([]);
  });
});

describe('the booths of an evening', () => {
  const evening = (board: ClassBoard) =>
    suggestBooths(
      board.learners.map((it) => standingOf(it, exercises, board.code, demoDay)),
      board.booths,
    );

  it('hold each learner who is here once, and nobody at a machine that cannot', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            at: fc.constantFrom(...exercises.map(({ slug }) => slug)),
            here: fc.boolean(),
            minutes: fc.nat(600),
          }),
          { maxLength: 25 },
        ),
        fc.array(
          fc.record({ largest: fc.constantFrom(0.09375, 0.125, 0.15625), down: fc.boolean() }),
          {
            maxLength: 20,
          },
        ),
        (learners, booths) => {
          const board: ClassBoard = {
            ...demo,
            learners: learners.map(({ at, here, minutes }, place) => ({
              ...newLearner(String(place)),
              gate: '2026-01-06',
              at,
              here,
              absences: [{ on: '2026-03-03', minutes }],
            })),
            booths: booths.map((it, place) => ({ ...it, booth: String(place), machine: '' })),
          };
          const { booths: taken, beside, free } = evening(board);
          const placed = [...taken, ...beside].map(({ standing: it }) => it.learner.learner).sort();
          expect(placed).toEqual(
            board.learners
              .filter(({ here }) => here)
              .map(({ learner }) => learner)
              .sort(),
          );
          for (const { booth, standing: it } of taken) {
            expect(booth.down).toBe(false);
            expect(booth.largest).toBeGreaterThanOrEqual(it.next?.largest ?? 0);
          }
          const used = new Set(taken.map(({ booth }) => booth));
          expect(used.size).toBe(taken.length);
          expect(free.some((it) => used.has(it))).toBe(false);
          // Nobody who could weld in a booth that stays free is left beside.
          for (const { standing: it } of beside)
            if (it.next?.station === 'booth')
              expect(free.some(({ largest }) => largest >= (it.next?.largest ?? 0))).toBe(false);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('of one size are taken in the order in which they stand', () => {
    const learners = ['a', 'b'].map((name) => ({
      ...newLearner(name),
      at: 'flat-bead',
      gate: '2026-01-06',
    }));
    const booths = ['3', '1', '2'].map((booth) => ({
      booth,
      machine: '',
      largest: 1 / 8,
      down: false,
    }));
    const { booths: taken, free } = evening({ ...demo, learners, booths });
    expect(taken.map(({ booth }) => booth.booth)).toEqual(['3', '1']);
    expect(free.map(({ booth }) => booth)).toEqual(['2']);
  });

  it('leave a strong machine to the learner who needs it', () => {
    const board: ClassBoard = {
      ...demo,
      learners: [
        { ...newLearner('a'), at: 'flat-bead', gate: '2026-01-06' },
        { ...newLearner('b'), at: 'larger-electrode-vertical', gate: '2026-01-06' },
      ],
      booths: [
        { booth: '1', machine: 'B', largest: 5 / 32, down: false },
        { booth: '2', machine: 'C', largest: 1 / 8, down: false },
      ],
    };
    expect(
      evening(board).booths.map(({ booth, standing: it }) => [booth.booth, it.learner.learner]),
    ).toEqual([
      ['1', 'b'],
      ['2', 'a'],
    ]);
  });

  it('are for nobody whose safety gate is neither signed nor passed', () => {
    const board = (learner: Partial<BoardLearner>): ClassBoard => ({
      ...demo,
      learners: [{ ...newLearner('a'), at: 'flat-bead', ...learner }],
    });
    const [kept] = evening(board({})).beside;
    expect(kept?.why).toContain('safety gate');
    expect(evening(board({})).booths).toEqual([]);
    expect(evening(board({ gate: '2026-01-06' })).booths).toHaveLength(1);
    expect(evening(board({ coupons: [coupon('safety-gate', 'passed')] })).booths).toHaveLength(1);
    expect(evening(board({ coupons: [coupon('safety-gate', 'waiting')] })).booths).toEqual([]);
  });

  it('say why somebody works beside them', () => {
    const learner = (name: string, more: Partial<BoardLearner>) => ({
      ...newLearner(name),
      gate: '2026-01-06',
      ...more,
    });
    const all = exercises.map(({ slug }) => coupon(slug, 'passed'));
    const board: ClassBoard = {
      ...demo,
      learners: [
        learner('first', { at: 'flat-bead' }),
        learner('second', { at: 'flat-bead' }),
        learner('strong', { at: 'larger-electrode-vertical' }),
        learner('done', { coupons: all }),
      ],
      booths: [
        { booth: '1', machine: '', largest: 1 / 8, down: false },
        { booth: '2', machine: '', largest: 5 / 32, down: true },
      ],
    };
    const why = Object.fromEntries(
      evening(board).beside.map((it) => [it.standing.learner.learner, it.why]),
    );
    expect(why).toEqual({
      second: 'every booth that could is taken',
      strong: 'no machine here burns that electrode',
      done: 'all exercises passed',
    });
    const side = exercises.find(({ station }) => station === 'side');
    const [beside] = evening({
      ...board,
      learners: [learner('side', { at: side?.slug ?? '' })],
    }).beside;
    expect(beside?.why).toBe(side?.title);
  });

  it('are chosen by those with most to catch up, then by those furthest back', () => {
    const learner = (name: string, at: string, minutes: number) => ({
      ...newLearner(name),
      gate: '2026-01-06',
      at,
      absences: [{ on: '2026-03-03', minutes }],
    });
    const board: ClassBoard = {
      ...demo,
      learners: [
        learner('far', 'fillet-2f', 0),
        learner('back', 'flat-bead', 0),
        learner('missed', 'fillet-2f', 165),
      ],
      booths: ['1', '2'].map((booth) => ({ booth, machine: '', largest: 5 / 32, down: false })),
    };
    const { booths, beside } = evening(board);
    expect(booths.map((it) => it.standing.learner.learner)).toEqual(['missed', 'back']);
    expect(beside.map((it) => it.standing.learner.learner)).toEqual(['far']);
  });

  it('are passed over where the machine gives too little, or alternating current alone', () => {
    const flat = exercises.find(({ slug }) => slug === 'flat-bead');
    expect(flat?.current).toBe(125);
    const booth = { booth: '1', machine: '', largest: 5 / 32, down: false };
    const burns = (it: Partial<BoardBooth>) => flat && canBurn({ ...booth, ...it }, flat);
    expect(burns({})).toBe(true);
    expect(burns({ most: 124 })).toBe(false);
    expect(burns({ most: 125, current: 'AC and DC' })).toBe(true);
    expect(burns({ most: 300, current: 'AC' })).toBe(false);
    expect(burns({ largest: 3 / 32 })).toBe(false);
    expect(burns({ largest: 1 / 8 })).toBe(true);
    const paper = { slug: 'x', title: 'X', station: 'booth', largest: 0 } as const;
    expect(canBurn({ ...booth, largest: 0, current: 'AC', most: 0 }, paper)).toBe(true);
    // A sheet that names no current asks for none.
    expect(canBurn({ ...booth, most: 0 }, { ...paper, largest: 1 / 8 })).toBe(true);
  });
});

it('counts an exercise for those who have it still before them', () => {
  const slugs = ['flat-bead', 'padding-flat', 'fillet-2f'];
  const learners = [
    newLearner('1'),
    { ...newLearner('2'), at: 'padding-flat' },
    {
      ...newLearner('3'),
      coupons: [coupon('fillet-2f', 'passed'), coupon('flat-bead', 'waiting')],
    },
  ];
  expect([...stillAhead({ learners }, slugs)]).toEqual([
    ['flat-bead', 2],
    ['padding-flat', 3],
    ['fillet-2f', 2],
  ]);
});

describe('records and tables', () => {
  it('leave the other learners and the other coupons of a board as they are', () => {
    const board: ClassBoard = {
      ...demo,
      learners: [
        { ...newLearner('6'), caughtUp: 15 },
        { ...newLearner('7'), coupons: [coupon('flat-bead', 'passed', '2026-02-01')] },
      ],
    };
    const record = {
      ...emptyRecord(),
      learner: '7',
      coupons: [coupon('fillet-2f', 'waiting', '2026-01-20')],
    };
    const [six, seven] = mergeRecord(board, record).learners;
    expect(six).toEqual(board.learners[0]);
    expect(seven?.coupons.map(({ exercise, on }) => `${exercise} ${on}`)).toEqual([
      'fillet-2f 2026-01-20',
      'flat-bead 2026-02-01',
    ]);
  });

  it('add a learner’s coupons, take over grades that were waiting, and take none back', () => {
    const board: ClassBoard = {
      ...demo,
      learners: [
        {
          ...newLearner('7'),
          coupons: [coupon('flat-bead', 'repeat'), coupon('padding-flat', 'waiting')],
        },
      ],
    };
    const record = {
      ...emptyRecord(),
      learner: ' 7 ',
      coupons: [
        coupon('flat-bead', 'waiting'),
        coupon('padding-flat', 'passed'),
        coupon('fillet-2f', 'waiting', '2026-03-05'),
      ],
    };
    const [learner] = mergeRecord(board, record).learners;
    expect(learner?.coupons.map(({ exercise, result }) => `${exercise} ${result}`)).toEqual([
      'flat-bead repeat',
      'padding-flat passed',
      'fillet-2f waiting',
    ]);
    expect(mergeRecord(mergeRecord(board, record), record)).toEqual(mergeRecord(board, record));
    expect(mergeRecord(board, { ...record, learner: '8' }).learners).toHaveLength(2);
  });

  it('come back as they went out', () => {
    const out = boardCsv(demo.learners.map((it) => standingOf(it, exercises, demo.code, demoDay)));
    expect(readBoardCsv(demo, exercises, out)).toEqual({
      board: demo,
      read: demo.learners.length,
      problems: [],
    });
    const saved = readFile(classBoard, writeFile(classBoard, demo, demoDay));
    expect(saved.ok && saved.data).toEqual(demo);
  });

  it('of before the safety gate was kept are still read', () => {
    const [one] = demo.learners;
    const old = {
      ...demo,
      learners: [{ ...one, gate: undefined }],
      booths: demo.booths.slice(0, 1),
    };
    const saved = readFile(classBoard, writeFile(classBoard, old as ClassBoard, demoDay));
    expect(saved.ok && saved.data.learners[0]?.gate).toBeUndefined();
    const table = readBoardCsv(
      demo,
      exercises,
      'learner,at,caught up min,tested,last welded\r\n1,,0,,',
    );
    expect(table.board.learners[0]?.gate).toBe(demo.learners[0]?.gate);
  });

  it('take the day of the safety gate where the table has it, and tell a day that is none', () => {
    const head = 'learner,at,caught up min,tested,last welded,gate\r\n';
    const read = readBoardCsv(
      demo,
      exercises,
      `${head}31,,0,,,2026-1-6\r\n32,,0,,,soon\r\n33,,,,,`,
    );
    expect(read.problems).toEqual([
      expect.stringMatching(/^Row 2: day of the safety gate needs a day/),
    ]);
    const added = read.board.learners.slice(demo.learners.length);
    expect(added.map(({ learner, gate, caughtUp }) => [learner, gate, caughtUp])).toEqual([
      ['31', '2026-01-06', 0],
      ['33', '', 0],
    ]);
  });

  it('take minutes up to a hundred thousand and names of two hundred letters', () => {
    const head = 'learner,at,caught up min,tested,last welded\r\n';
    const long = 'n'.repeat(201);
    const read = readBoardCsv(
      demo,
      exercises,
      `${head}41,,100000,,\r\n42,,100001,,\r\n${long},,0,,`,
    );
    expect(read.problems).toEqual(['Row 2: “100001” is no number of minutes']);
    const added = read.board.learners.slice(demo.learners.length);
    expect(added.map(({ learner }) => learner)).toEqual(['41', 'n'.repeat(200)]);
    expect(added[0]?.caughtUp).toBe(100_000);
  });

  it('show what the board has worked out beside what was typed', () => {
    const all = exercises.map(({ slug }) => coupon(slug, 'passed'));
    const out = boardCsv([
      standing({ learner: '1', coupons: all, absences: [{ on: '2026-03-03', minutes: 90 }] }),
      standing({ learner: '2', at: 'fillet-2f', tested: '2025-10-01', gate: '2026-01-06' }),
    ]);
    expect(out.replace('\uFEFF', '').split('\r\n')).toEqual([
      'learner,at,caught up min,tested,last welded,gate,next,waiting,repeats,to catch up min,good until',
      '1,,0,,,,,0,0,90,',
      '2,fillet-2f,0,2025-10-01,,2026-01-06,fillet-2f,0,0,0,2026-04-01',
      '',
    ]);
  });

  it('with wrong columns or slips are told row by row, and the rest is taken', () => {
    expect(readBoardCsv(demo, exercises, 'name;grade\r\nx;1').problems[0]).toContain(
      'no column "learner"',
    );
    const head = 'learner,at,caught up min,tested,last welded\r\n';
    const rows = [
      ',flat-bead,0,,',
      '21,nowhere,0,,',
      '22,,much,,',
      '23,,0,3/2/26,',
      '24,flat-bead,30,,',
      '25,,0,,3/2/26',
      '26,,-1,,',
      '27,,"12,5",2026-1-5,2026-02-01',
    ];
    const read = readBoardCsv(demo, exercises, head + rows.join('\r\n'));
    expect(read.problems.map((text) => text.slice(0, 6))).toEqual([
      'Row 1:',
      'Row 2:',
      'Row 3:',
      'Row 4:',
      'Row 6:',
      'Row 7:',
    ]);
    expect(read.read).toBe(2);
    expect(read.board.learners).toHaveLength(demo.learners.length + 2);
    expect(read.board.learners.at(-1)).toMatchObject({
      learner: '27',
      caughtUp: 12.5,
      tested: '2026-01-05',
      lastWelded: '2026-02-01',
    });
    expect(readBoardCsv(demo, exercises, '\u0000\u0001').read).toBe(0);
  });
});

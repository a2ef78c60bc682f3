import { Component, createRef } from 'preact';
import { boardCsv, readBoardCsv } from '../../lib/class/board-csv.ts';
import { mergeRecord } from '../../lib/class/merge-record.ts';
import { type BoardExercise, standingOf } from '../../lib/class/standing.ts';
import { type ClassBoard, classBoard, newLearner } from '../../lib/files/class-board.ts';
import { readFile } from '../../lib/files/file-kind.ts';
import { learnerRecord } from '../../lib/files/learner-record.ts';
import { readDay } from '../../lib/text/day-text.ts';
import { changed, type Undo, undoOf } from '../../lib/undo.ts';
import TypedBox from '../ClassPlan/TypedBox.tsx';
import { download } from '../Shelf/download.ts';
import FileButtons from '../Shelf/FileButtons.tsx';
import { Shelf } from '../Shelf/shelf.ts';
import { today as localDay } from '../Shelf/today.ts';
import UndoRow from '../Shelf/UndoRow.tsx';
import BoardSheets from './BoardSheets.tsx';
import BoothRows from './BoothRows.tsx';
import LearnerRows from './LearnerRows.tsx';

export interface BoardData {
  exercises: BoardExercise[];
  demo: ClassBoard;
}

interface State {
  undo: Undo<ClassBoard>;
  said: string;
  trouble: string[];
  newName: string;
  today: string;
}

/** The last evening that a board tells of: the demo class stands on its own day, not on today's. */
const lastEvening = ({ learners }: ClassBoard): string =>
  learners
    .flatMap(({ coupons, absences }) => [...coupons, ...absences].map(({ on }) => on))
    .sort()
    .at(-1) ?? '';

/** Where a class board is kept: learners, booths, files, and what follows from them. */
export default class BoardBench extends Component<BoardData, State> {
  private shelf = new Shelf(classBoard, () => this.props.demo);
  private files = createRef<HTMLInputElement>();
  private table = createRef<HTMLInputElement>();
  private stop: (() => void) | undefined;
  override state: State;

  constructor(props: BoardData) {
    super(props);
    const { data, problem } = this.shelf.take();
    this.state = {
      undo: undoOf(data),
      said: '',
      trouble: problem ? [problem] : [],
      newName: '',
      today: data === props.demo ? lastEvening(data) : localDay(),
    };
  }

  override componentDidMount() {
    this.stop = this.shelf.watch(({ data, problem }) =>
      this.setState({
        undo: changed(this.state.undo, data),
        trouble: problem ? [problem] : [],
        said: 'Another tab has changed this board; here it is.',
      }),
    );
  }

  override componentWillUnmount() {
    this.stop?.();
  }

  keep(undo: Undo<ClassBoard>, said = '', trouble: string[] = []) {
    const problem = this.shelf.put(undo.now);
    this.setState({ undo, said, trouble: problem ? [...trouble, problem] : trouble });
  }

  put = (next: ClassBoard, said = '', trouble: string[] = []) =>
    this.keep(changed(this.state.undo, next), said, trouble);

  addLearner = () => {
    const { undo, newName } = this.state;
    const board = undo.now;
    const name = newName.trim().slice(0, 200);
    const taken = board.learners.some(({ learner }) => learner === name);
    if (name === '' || taken) {
      this.setState({
        trouble: [
          taken ? `${name} is on the board already` : 'New learner needs a number or initials',
        ],
      });
      return;
    }
    this.put(
      { ...board, learners: [...board.learners, newLearner(name)] },
      `${name} is on the board.`,
    );
    this.setState({ newName: '' });
  };

  /** Any number of records at once; each that cannot be read is told, the others are taken. */
  takeRecords = async () => {
    const box = this.files.current;
    const chosen = [...(box?.files ?? [])];
    let board = this.state.undo.now;
    const trouble: string[] = [];
    let taken = 0;
    for (const file of chosen) {
      const read = await file.text().then(
        (text) => readFile(learnerRecord, text),
        () => ({ ok: false as const, problem: 'This file could not be read' }),
      );
      if (!read.ok) trouble.push(`${file.name}: ${read.problem}`);
      else if (read.data.learner.trim() === '')
        trouble.push(
          `${file.name}: this record has no learner number; write one into it and save it again`,
        );
      else {
        board = mergeRecord(board, read.data);
        taken += 1;
      }
    }
    if (box) box.value = '';
    if (taken > 0) this.put(board, `${taken} of ${chosen.length} records taken over.`, trouble);
    else this.setState({ trouble, said: 'Nothing was changed.' });
  };

  takeTable = async () => {
    const box = this.table.current;
    const file = box?.files?.[0];
    if (!box || !file) return;
    const text = await file.text().catch(() => '');
    const { board, read, problems } = readBoardCsv(this.state.undo.now, this.props.exercises, text);
    box.value = '';
    if (read > 0) this.put(board, `${read} learners taken over from the table.`, problems);
    else this.setState({ trouble: problems, said: 'Nothing was changed.' });
  };

  override render() {
    const { exercises, demo } = this.props;
    const { undo, said, trouble, newName, today } = this.state;
    const board = undo.now;
    const day = readDay(today);
    const on = 'day' in day ? day.day : localDay();
    const standings = board.learners.map((it) => standingOf(it, exercises, board.code, on));
    return (
      <>
        <section class="plan-form screen-only" aria-labelledby="board-form-title">
          <h2 id="board-form-title">Your board</h2>
          <FileButtons
            kind={classBoard}
            data={board}
            onOpen={(data) => this.put(data)}
            onEmpty={() => this.put({ ...board, name: '', learners: [] })}
          />
          <p class="plan-actions">
            <button type="button" onClick={() => this.files.current?.click()}>
              Take over learners’ records
            </button>
            <button type="button" onClick={() => this.table.current?.click()}>
              Take over a table (CSV)
            </button>
            <button
              type="button"
              onClick={() => download('class-board.csv', boardCsv(standings), 'text/csv')}
            >
              As a table (CSV)
            </button>
            <button
              type="button"
              onClick={() => {
                this.setState({ today: lastEvening(demo) });
                this.put(demo, 'The demo class. Undo brings yours back.');
              }}
            >
              Show the demo class
            </button>
            <input
              ref={this.files}
              id="board-records"
              type="file"
              accept=".json,application/json"
              multiple
              hidden
              aria-label="Learners’ records"
              onChange={this.takeRecords}
            />
            <input
              ref={this.table}
              id="board-table"
              type="file"
              accept=".csv,text/csv"
              hidden
              aria-label="Table of learners"
              onChange={this.takeTable}
            />
          </p>
          <UndoRow
            undo={undo}
            said={said}
            trouble={trouble}
            onStep={(to, told) => this.keep(to, told)}
          />
          <div class="plan-boxes">
            <TypedBox
              id="board-day"
              label="Today"
              value={today}
              hint="The six months are counted to this day."
              problem={'problem' in day ? `Today ${day.problem}` : undefined}
              onText={(text) => this.setState({ today: text })}
            />
            <div class="plan-box">
              <label for="board-code">Six months by</label>
              <select
                id="board-code"
                value={board.code}
                onChange={(event) =>
                  this.put({ ...board, code: event.currentTarget.value as ClassBoard['code'] })
                }
              >
                <option value="AWS D1.1">AWS D1.1</option>
                <option value="ASME IX">ASME IX</option>
              </select>
            </div>
          </div>
          <h3>Learners</h3>
          <p class="quiet">Numbers or initials; a name is never needed.</p>
          <LearnerRows
            learners={board.learners}
            exercises={exercises}
            today={on}
            onLearner={(at, learner) =>
              this.put({
                ...board,
                learners: board.learners.flatMap((it, place) =>
                  place === at ? (learner ?? []) : it,
                ),
              })
            }
          />
          <div class="board-add">
            <TypedBox
              id="board-new"
              label="New learner"
              value={newName}
              onText={(text) => this.setState({ newName: text })}
            />
            <button type="button" onClick={this.addLearner}>
              Put on the board
            </button>
          </div>
          <details class="plan-group">
            <summary>
              <h3>Booths and machines</h3>
            </summary>
            <BoothRows
              booths={board.booths}
              onBooth={(at, booth) =>
                this.put({
                  ...board,
                  booths: board.booths.flatMap((it, place) => (place === at ? (booth ?? []) : it)),
                })
              }
              onAdd={() =>
                this.put({
                  ...board,
                  booths: [
                    ...board.booths,
                    { booth: freshNumber(board), machine: '', largest: 0.125, down: false },
                  ],
                })
              }
            />
          </details>
        </section>
        <BoardSheets
          board={board}
          standings={standings}
          exercises={exercises}
          today={on}
          actions={
            <p class="plan-actions screen-only">
              <button type="button" onClick={() => print()}>
                Print the board
              </button>
            </p>
          }
        />
      </>
    );
  }
}

const freshNumber = ({ booths }: ClassBoard): string =>
  String(Math.max(0, ...booths.map(({ booth }) => Number(booth) || 0)) + 1);

import type { TestSheet } from '../../lib/test-sheet/test-sheet.ts';

/** What is written by hand, in the order of the day. */
const head = [
  'Name and ID or learner no.',
  'ID checked by (witness)',
  'WPS no. and revision',
  'Code edition',
  'Base metal, heat no.',
  'Stamp, top mark at',
];
const ends = [
  'Tester, name',
  'Laboratory report no.',
  'Qualified person, signature',
  'Date signed',
];
const blankRows = 3;

/** A draft of a performance qualification record; without a sheet every line of it is blank. */
export default function RecordSheet({ sheet }: { sheet?: TestSheet | undefined }) {
  const chosen = sheet?.columns[0];
  const facts = sheet
    ? sheet.coupon
    : ['Coupon (plate or pipe, thickness)', 'Outside diameter', 'Position'].map((label) => ({
        label,
        text: '',
      }));
  const deposits = sheet?.deposits ?? Array.from({ length: blankRows }, () => undefined);
  const specimens = chosen?.specimens.length
    ? chosen.specimens
    : Array.from({ length: blankRows * 2 }, (_, place) => ({ id: '', kind: String(place) }));
  return (
    <article class="booth-sheet test-record" aria-label="Record of a welder’s test, draft">
      <header>
        <div>
          <h3>Performance qualification record, draft</h3>
          <p class="booth-caution">
            <b>This is a draft until a qualified person signs it.</b> It certifies nobody. Write
            each line when its step is done; strike out what does not apply.
          </p>
        </div>
      </header>
      <dl class="test-facts">
        <Line label="Code" text={sheet?.code} />
        <Line label="Date of the test" text={sheet?.day} />
        <Line label="Process" text="SMAW (stick)" />
        {facts.map((one) => (
          <Line key={one.label} {...one} />
        ))}
        {head.map((label) => (
          <Line key={label} label={label} text="" />
        ))}
      </dl>
      <Grid
        caption="Deposits, root first"
        heads={['Classification', 'F-number', 'Thickness t', 'Layers', 'Backing', 'Progression']}
        rows={deposits.map((row, place) => [
          row?.classification ?? '',
          chosen?.groups[place] ?? '',
          row?.thickness ?? '',
          row?.layers ?? '',
          row?.backing ?? '',
          row?.progression ?? '',
        ])}
      />
      <Grid
        caption="Visual examination, before any cut"
        heads={['Position', 'Readings', 'Accepted or rejected', 'Examined by, date']}
        rows={(sheet?.test.split('+') ?? ['', '']).map((test) => [test, '', '', ''])}
      />
      <Grid
        caption="Bend, break, macro or radiograph"
        heads={['Specimen ID', 'Kind of test', 'Openings or findings', 'Result']}
        rows={specimens.map(({ id, kind }) => [id, id === '' ? '' : kind, '', ''])}
      />
      <dl class="test-facts">
        <Line
          label="Holds without use through"
          text={chosen?.until ? `${chosen.until} (worked out)` : ''}
        />
        <Line label="Radiograph, if used instead of bends: report" text="" />
        {ends.map((label) => (
          <Line key={label} label={label} text="" />
        ))}
      </dl>
    </article>
  );
}

function Line({ label, text }: { label: string; text: string | undefined }) {
  return (
    <div>
      <dt>{label}</dt>
      <dd>{text}</dd>
    </div>
  );
}

interface GridProps {
  caption: string;
  heads: readonly string[];
  rows: readonly (readonly string[])[];
}

function Grid({ caption, heads, rows }: GridProps) {
  return (
    <div class="scroll" tabIndex={0} role="group" aria-label={caption}>
      <table class="test-grid">
        <caption>{caption}</caption>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, place) => (
            <tr key={`${place}-${row[0]}`}>
              {row.map((cell, column) => (
                <td key={heads[column]}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

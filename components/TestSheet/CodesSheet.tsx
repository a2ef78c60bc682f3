import type { TestSheet } from '../../lib/test-sheet/test-sheet.ts';
import CutDrawing from './CutDrawing.tsx';

/** One side of paper: the coupon, and what each code says of it, side by side. */
export default function CodesSheet({ sheet }: { sheet: TestSheet }) {
  const { coupon, columns, rows, cautions, day, code } = sheet;
  return (
    <article class="booth-sheet test-sheet" aria-label="Test-day sheet">
      <header>
        <div>
          <h3>Test day: {sheet.test}</h3>
          <p class="booth-caution">
            <b>Training material.</b> The contract names the code and its edition; the welding
            procedure and a qualified examiner decide. At the press: guard closed, stand aside.
          </p>
        </div>
      </header>
      <dl class="test-facts">
        {[...coupon, { label: 'Day of the test', text: day || '____________' }].map((one) => (
          <div key={one.label}>
            <dt>{one.label}</dt>
            <dd>{one.text}</dd>
          </div>
        ))}
      </dl>
      {columns[0]?.cuts && <CutDrawing cuts={columns[0].cuts} code={code} />}
      <div class="scroll" tabIndex={0} role="group" aria-label="Both codes, side by side">
        <table>
          <caption>If every specimen passes</caption>
          <thead>
            <tr>
              <td />
              {columns.map((one) => (
                <th key={one.code} scope="col">
                  {one.code}
                  {one.code === code && ', chosen'}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {columns.some(({ problems }) => problems.length > 0) && (
              <tr>
                <th scope="row">Not answered</th>
                {columns.map((one) => (
                  <td key={one.code}>
                    {one.problems.map(({ text }) => text.replace(/[{}]/g, '')).join('. ')}
                  </td>
                ))}
              </tr>
            )}
            {rows.map(({ label, cells, differ }) => (
              <tr key={label} class={differ ? 'test-differ' : undefined}>
                <th scope="row">
                  {label}
                  {differ && <small> ≠ codes differ</small>}
                </th>
                {cells.map((lines, place) => (
                  <td key={columns[place]?.code}>
                    {lines.map((line) => (
                      <span key={line} class="booth-line">
                        {line}
                      </span>
                    ))}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {cautions.map((text) => (
        <p key={text}>
          <b>Mind:</b> {text}
        </p>
      ))}
    </article>
  );
}

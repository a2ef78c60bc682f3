/** The end of a long log's trace, so that an evening can be drawn large enough to read. */
import type { ExposureTrace } from '../exposure/exposure-trace.ts';

/** `from` in hours on the trace's clock; a trace that begins later comes back as it is. */
export function recentTrace(trace: ExposureTrace, from: number): ExposureTrace {
  const after = trace.line.findIndex(({ time }) => time > from);
  const [a, b] = [trace.line[after - 1], trace.line[after]];
  if (!a || !b) return trace;
  const hours = a.hours + ((b.hours - a.hours) * (from - a.time)) / (b.time - a.time);
  return {
    limit: trace.limit,
    line: [{ time: from, hours }, ...trace.line.slice(after)],
    stays: trace.stays
      .filter(({ to }) => to > from)
      .map((stay) => (stay.from < from ? { ...stay, from } : stay)),
  };
}

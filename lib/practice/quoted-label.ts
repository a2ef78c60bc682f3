/** A label in running text: up to its first comma, colon or bracket, with a small letter. */
export function quotedLabel({ label }: { label: string }): string {
  const [short = label] = label.split(/[,:(]/);
  const text = short.trim();
  return `“${/^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text}”`;
}

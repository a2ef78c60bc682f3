/** The ids of all calculations, where the bundler can read the folder. */
export const calculationIds: readonly string[] = Object.keys(
  import.meta.glob('../../lib/calculations/*.ts'),
)
  .map((path) => path.replace(/^.*\/|\.ts$/g, ''))
  .sort();

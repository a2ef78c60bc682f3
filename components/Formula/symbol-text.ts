/** A symbol in running text: what stands below the line in TeX follows directly. */
export const symbolText = (symbol: string): string => symbol.replace('_', '');

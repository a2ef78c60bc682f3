/** A symbol as TeX: `U`, `η`, `t_8/5`, `CE_IIW`, `A'`. What follows `_` is set below the line. */
export function symbolTex(symbol: string): string {
  const [head = '', below] = symbol.split('_');
  const main = /^(\p{L}|\p{L}'+)$/u.test(head) ? head : `\\mathrm{${head.replaceAll('%', '\\%')}}`;
  return below === undefined ? main : `${main}_{\\mathrm{${below}}}`;
}

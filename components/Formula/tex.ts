/**
 * A formula's text as TeX, from mathjs's own tree. `leaf` gives what stands for a name: a symbol,
 * or the slot for a value.
 */
import { type MathNode, parse } from 'mathjs';

type Node = MathNode & {
  type: string;
  fn?: { name: string } | string;
  op?: string;
  args?: Node[];
  content?: Node;
  name?: string;
  value?: number | string;
  condition?: Node;
  trueExpr?: Node;
  falseExpr?: Node;
  conditionals?: string[];
  params?: Node[];
};

const comparisons: Record<string, string> = {
  '<': '<',
  '<=': '\\le',
  '>': '>',
  '>=': '\\ge',
  '==': '=',
  '!=': '\\ne',
};
const functions: Record<string, string> = {
  sinDegrees: '\\sin',
  cosDegrees: '\\cos',
  tanDegrees: '\\tan',
  asinDegrees: '\\arcsin',
  atan: '\\arctan',
  asin: '\\arcsin',
  acos: '\\arccos',
  atanDegrees: '\\arctan',
  acosDegrees: '\\arccos',
  sin: '\\sin',
  cos: '\\cos',
  tan: '\\tan',
  log: '\\ln',
  tanh: '\\tanh',
  log10: '\\log_{10}',
  min: '\\min',
  max: '\\max',
  exp: '\\exp',
};

export function texOf(text: string, leaf: (name: string) => string): string {
  const write = (node: Node): string => {
    const args = node.args ?? [];
    const [a, b] = args as [Node, Node];
    switch (node.type) {
      case 'ConstantNode':
        return String(node.value);
      case 'SymbolNode':
        return node.name === 'pi' ? '\\pi' : leaf(node.name as string);
      case 'ParenthesisNode':
        return `\\left(${write(node.content as Node)}\\right)`;
      case 'OperatorNode':
        return operator(node, a, b);
      case 'FunctionNode':
        return call((node.fn as { name: string }).name, args);
      case 'ConditionalNode':
        return cases(node);
      case 'RelationalNode':
        return relation(node);
      default:
        throw new Error(`the formula “${text}” has a ${node.type}, which cannot be typeset`);
    }
  };
  /** A value with its unit needs brackets: 3 in squared is not 3 square inches. */
  const power = (base: string): string =>
    base.startsWith('\\text') ? `\\left(${base}\\right)` : `{${base}}`;
  const bare = (node: Node): Node =>
    node.type === 'ParenthesisNode' ? (node.content as Node) : node;
  const operator = (node: Node, a: Node, b: Node): string => {
    switch (node.op) {
      case '/':
        return `\\frac{${write(bare(a))}}{${write(bare(b))}}`;
      case '*':
        return `${write(a)} \\cdot ${write(b)}`;
      case '^':
        return `${a.type === 'SymbolNode' ? power(write(a)) : write(a)}^{${write(bare(b))}}`;
      case '-':
        return b ? `${write(a)} - ${write(b)}` : `-${write(a)}`;
      case 'and':
        return `${write(a)} \\text{ and } ${write(b)}`;
      case 'or':
        return `${write(a)} \\text{ or } ${write(b)}`;
      default:
        return `${write(a)} ${comparisons[node.op as string] ?? node.op} ${write(b)}`;
    }
  };
  const call = (name: string, args: Node[]): string => {
    const [a, b] = args as [Node, Node];
    if (name === 'sqrt') return `\\sqrt{${write(a)}}`;
    if (name === 'abs') return `\\left|${write(a)}\\right|`;
    if (name === 'ceil') return `\\left\\lceil ${write(a)} \\right\\rceil`;
    if (name === 'floor') return `\\left\\lfloor ${write(a)} \\right\\rfloor`;
    if (name === 'equalText') return `${write(a)} \\text{ is ${String(b.value)}}`;
    const known = functions[name];
    if (!known) throw new Error(`the formula “${text}” calls ${name}, which cannot be typeset`);
    return `${known}\\left(${args.map(write).join(',\\ ')}\\right)`;
  };
  const cases = (node: Node): string => {
    const rows: string[] = [];
    let at: Node = node;
    while (at.type === 'ConditionalNode') {
      rows.push(
        `${write(bare(at.trueExpr as Node))} & \\text{if } ${write(bare(at.condition as Node))}`,
      );
      at = bare(at.falseExpr as Node);
    }
    rows.push(`${write(at)} & \\text{otherwise}`);
    return `\\begin{cases}${rows.join(' \\\\ ')}\\end{cases}`;
  };
  const relation = (node: Node): string =>
    (node.params as Node[])
      .map((part, index) =>
        index === 0
          ? write(part)
          : `${comparisons[signs[node.conditionals?.[index - 1] ?? ''] ?? '<']} ${write(part)}`,
      )
      .join(' ');
  return write(parse(text) as Node);
}

const signs: Record<string, string> = {
  smaller: '<',
  smallerEq: '<=',
  larger: '>',
  largerEq: '>=',
};

import type { ComponentChildren } from 'preact';
import type { FieldProps } from '../Calculator/Field.tsx';
import Kept from './Kept.tsx';
import Problems from './Problems.tsx';

type Props = Pick<FieldProps, 'id' | 'problems' | 'system' | 'texts'> & {
  /** A list of rows is a group of boxes, with a legend for its label. */
  rows?: boolean;
  children: ComponentChildren;
};

/** What stands round every box: its label above, what is wrong with it and its help below. */
export default function FieldFrame({ id, problems, system, texts, rows, children }: Props) {
  const Box = rows ? 'fieldset' : 'div';
  return (
    <Box class={rows ? 'field rows' : 'field'} {...(rows && { id })}>
      <Kept as={rows ? 'legend' : 'label'} {...(!rows && { for: id })} html={texts?.label} />
      {children}
      <Problems id={`${id}-problem`} problems={problems} system={system} />
      <Kept as="div" html={texts?.help} />
    </Box>
  );
}

import { Component, createRef } from 'preact';
import { type FileKind, readFile, writeFile } from '../../lib/files/file-kind.ts';
import { download } from './download.ts';

interface Props<T> {
  kind: FileKind<T>;
  data: T;
  /** Takes over what a file held. */
  onOpen(data: T): void;
  /** Throws away what is there; the button asks once more. */
  onEmpty?(): void;
}

interface State {
  said: string;
  asking: boolean;
}

/** Save to a file, open a file, start empty: for everything that a reader keeps in the browser. */
export default class FileButtons<T> extends Component<Props<T>, State> {
  override state: State = { said: '', asking: false };
  private chooser = createRef<HTMLInputElement>();

  save = () => {
    const now = new Date().toISOString();
    const { kind, data } = this.props;
    download(
      `${kind.name}-${now.slice(0, 10)}.json`,
      writeFile(kind, data, now),
      'application/json',
    );
    this.setState({ said: 'Saved to a file.', asking: false });
  };

  open = async () => {
    const box = this.chooser.current;
    const file = box?.files?.[0];
    if (!box || !file) return;
    const { kind, onOpen } = this.props;
    let said: string;
    try {
      const read = readFile(kind, await file.text());
      if (read.ok) onOpen(read.data);
      said = read.ok ? 'Opened.' : `${read.problem}. Nothing was changed.`;
    } catch {
      said = 'This file could not be read. Nothing was changed.';
    }
    // The same file can then be chosen again.
    box.value = '';
    this.setState({ said, asking: false });
  };

  empty = () => {
    if (!this.state.asking) {
      this.setState({ asking: true, said: 'This throws away what is here. Press again to go on.' });
      return;
    }
    this.props.onEmpty?.();
    this.setState({ asking: false, said: 'Empty.' });
  };

  override render() {
    const { asking, said } = this.state;
    const id = `open-${this.props.kind.name}`;
    return (
      <div class="file-buttons screen-only">
        <button type="button" onClick={this.save}>
          Save to a file
        </button>
        <button type="button" onClick={() => this.chooser.current?.click()}>
          Open a file
        </button>
        <input
          ref={this.chooser}
          id={id}
          type="file"
          accept=".json,application/json"
          aria-label="Open a file"
          hidden
          onChange={this.open}
        />
        {this.props.onEmpty && (
          <button type="button" onClick={this.empty}>
            {asking ? 'Yes, start empty' : 'Start empty'}
          </button>
        )}
        <span role="status">{said}</span>
      </div>
    );
  }
}

import { Component } from 'preact';

/** Copies an address; where the browser refuses, the address bar already holds it. */
export default class CopyLink extends Component<
  { address: () => Promise<string> },
  { said: string }
> {
  override state = { said: '' };

  copy = async () => {
    try {
      await navigator.clipboard.writeText(await this.props.address());
      this.setState({ said: 'Copied.' });
    } catch {
      this.setState({ said: 'Copy the address bar: it holds these numbers.' });
    }
  };

  override render() {
    return (
      <>
        <button type="button" onClick={this.copy}>
          Copy link to these numbers
        </button>
        <span role="status">{this.state.said}</span>
      </>
    );
  }
}

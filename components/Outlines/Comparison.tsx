import { Component } from 'preact';
import type { OwnOutline } from '../../lib/files/own-outline-file.ts';
import { likelyLessons } from '../../lib/outlines/likely-lessons.ts';
import { compareOutline, ownOutlineAsCsv } from '../../lib/outlines/own-outline.ts';
import { download } from '../Shelf/download.ts';

export interface Lesson {
  id: string;
  title: string;
  address: string;
  words: string;
}

interface Props {
  lessons: readonly Lesson[];
  outline: OwnOutline;
  onChange(outline: OwnOutline): void;
}

/** The reviewer's topics, each with the lessons that serve it, and what is left over on both sides. */
export default class Comparison extends Component<Props, { asking: boolean }> {
  override state = { asking: false };

  set(index: number, lessons: string[]) {
    const { outline, onChange } = this.props;
    const topics = outline.topics.map((one, i) => (i === index ? { ...one, lessons } : one));
    onChange({ ...outline, topics });
  }

  empty = () => {
    if (!this.state.asking) return this.setState({ asking: true });
    this.setState({ asking: false });
    this.props.onChange({ name: '', topics: [] });
  };

  save = () =>
    download('outline-compared.csv', ownOutlineAsCsv(this.props.outline.topics), 'text/csv');

  override render() {
    const { lessons, outline } = this.props;
    const { topics, name } = outline;
    if (topics.length === 0) return null;
    const ids = lessons.map(({ id }) => id);
    const { served, open, spare } = compareOutline(topics, ids);
    const titleOf = (id: string) => lessons.find((one) => one.id === id)?.title ?? id;
    const link = (id: string) => (
      <a href={lessons.find((one) => one.id === id)?.address}>{titleOf(id)}</a>
    );
    return (
      <>
        <h2 tabIndex={-1}>{name || 'Your outline'}</h2>
        <p role="status">
          <b>
            {topics.length} {topics.length === 1 ? 'topic' : 'topics'}: {served} served,{' '}
            {open.length} open.
          </b>
        </p>
        <p class="screen-only">
          <button type="button" onClick={() => print()}>
            Print the comparison
          </button>{' '}
          <button type="button" onClick={this.save}>
            Save it as a table
          </button>{' '}
          <button type="button" onClick={this.empty}>
            {this.state.asking ? 'Yes, take it away' : 'Take it away'}
          </button>
        </p>
        <ol class="topics">
          {topics.map(({ code, topic, lessons: chosen }, index) => (
            <li key={index}>
              <p id={`topic-${index}`}>
                {code && <b>{code} </b>}
                {topic}
              </p>
              <ul class="chosen">
                {chosen.map((id) => (
                  <li key={id}>
                    {link(id)}{' '}
                    <button
                      type="button"
                      class="screen-only"
                      aria-label={`Take ${titleOf(id)} away from this topic`}
                      onClick={() =>
                        this.set(
                          index,
                          chosen.filter((one) => one !== id),
                        )
                      }
                    >
                      Take away
                    </button>
                  </li>
                ))}
                {chosen.length === 0 && <li class="print-only">Open.</li>}
              </ul>
              {this.chooser(index, topic, chosen)}
            </li>
          ))}
        </ol>
        <h3>Topics that no lesson serves</h3>
        {open.length === 0 ? (
          <p>None.</p>
        ) : (
          <ul class="tight">
            {open.map(({ code, topic }) => (
              <li>
                {code} {topic}
              </li>
            ))}
          </ul>
        )}
        <h3>Lessons that no topic asks for</h3>
        {spare.length === 0 ? (
          <p>None.</p>
        ) : (
          <ul class="tight">
            {spare.map((id) => (
              <li>{link(id)}</li>
            ))}
          </ul>
        )}
      </>
    );
  }

  chooser(index: number, topic: string, chosen: readonly string[]) {
    const { lessons } = this.props;
    const free = lessons.filter(({ id }) => !chosen.includes(id));
    const likely = likelyLessons(topic, lessons).filter((id) => !chosen.includes(id));
    const option = ({ id, title }: Lesson) => (
      <option value={id}>
        {lessons.findIndex((one) => one.id === id) + 1} {title}
      </option>
    );
    return (
      <select
        class="screen-only"
        aria-label="Add a lesson that serves this topic"
        aria-describedby={`topic-${index}`}
        onChange={({ currentTarget }) => {
          const { value } = currentTarget;
          currentTarget.value = '';
          if (value) this.set(index, [...chosen, value]);
        }}
      >
        <option value="">Add a lesson</option>
        {likely.length > 0 && (
          <optgroup label="By its words">
            {free.filter(({ id }) => likely.includes(id)).map(option)}
          </optgroup>
        )}
        <optgroup label="All">{free.filter(({ id }) => !likely.includes(id)).map(option)}</optgroup>
      </select>
    );
  }
}

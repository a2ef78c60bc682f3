import type { BoardExercise } from '../../lib/class/standing.ts';
import type { BoardLearner } from '../../lib/files/class-board.ts';
import LearnerCard from './LearnerCard.tsx';

interface Props {
  learners: readonly BoardLearner[];
  exercises: readonly BoardExercise[];
  today: string;
  onLearner(place: number, learner: BoardLearner | undefined): void;
}

/** Learners, one card each; a card opens to what is written down about its learner. */
export default function LearnerRows({ learners, exercises, today, onLearner }: Props) {
  return (
    <ul class="plan-exercises">
      {learners.map((learner, at) => (
        <LearnerCard
          key={learner.learner}
          place={at}
          learner={learner}
          exercises={exercises}
          today={today}
          onLearner={(next) => onLearner(at, next)}
        />
      ))}
    </ul>
  );
}

import { PRACTICE_CLAMPED_ENDS } from '../../trade/endCondition.ts';

/** What residual cents are worth. It stands beside them, always open. */
export function Honesty({ firmEnds }: { firmEnds: number }) {
  return (
    <div className="fit-honesty">
      <p>
        How much these cents are worth: in a blind test 32 listeners found no significant difference between
        straight, per-string and nut-and-saddle compensation (Mottola, “Blind Listening Evaluation of Steel
        String Acoustic Guitar Compensation Strategies”, abstract read; p = .596 and .286).
      </p>
      <p>
        {firmEnds === PRACTICE_CLAMPED_ENDS ? 'α = 2 is' : `α = 2, the default, is`} fitted to common
        practice. No source settles it for steel: the paper behind the formula measured about 1.1 on nylon.
        Your own measured set-backs go before either.
      </p>
      <p>
        The slot’s angle moves by about 1.2°, for a light set, with the cores that are assumed: measure yours
        if you can.
      </p>
    </div>
  );
}

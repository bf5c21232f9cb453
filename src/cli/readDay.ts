import { UseError } from './exit.ts';

/** First and last day that every format of ours can say: ZIP counts years from 1980 in seven bits, of which all take 119. */
const [FIRST, LAST] = ['1980-01-01', '2099-12-31'];

/** A day typed as `2031-05-17`, at midnight UTC; today's, by the clock on the wall, when none is. Throws `UseError`. */
export function readDay(typed: string | undefined): Date {
  if (typed === undefined) {
    const now = new Date();
    return new Date(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()));
  }
  const day = new Date(/^\d{4}-\d\d-\d\d$/.test(typed) ? `${typed}T00:00:00Z` : Number.NaN);
  // 2031-02-30 would else pass for the 2nd of March
  const real = !Number.isNaN(day.getTime()) && dayText(day) === typed;
  if (real && typed >= FIRST && typed <= LAST) return day;
  throw new UseError(`--date ${typed}: it must be a day such as 2031-05-17, from ${FIRST} to ${LAST}.`);
}

/** A day as it stands on paper: ISO 8601. */
export const dayText = (day: Date): string => day.toISOString().slice(0, 10);

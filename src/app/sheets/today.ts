/** Today by the clock on the wall, at midnight UTC: what papers and packets are dated with. */
export function today(): Date {
  const now = new Date();
  return new Date(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()));
}

/** A day as it stands on paper: ISO 8601. */
export const dayText = (day: Date): string => day.toISOString().slice(0, 10);

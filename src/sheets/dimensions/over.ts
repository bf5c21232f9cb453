/** Between a text and the line that it stands on, mm. */
export const OVER = 0.8;

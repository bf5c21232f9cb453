/** A sanding allowance, mm, as every name, title and paper of an order says it: to a hundredth, no needless figures. */
export function allowanceText(allowance: number): string {
  return String(Number(allowance.toFixed(2)));
}

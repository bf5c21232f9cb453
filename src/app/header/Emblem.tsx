/** The program's mark: a bridge in plan, its slot and six pins. */
export function Emblem() {
  return (
    <svg className="emblem" viewBox="-19 -7 38 14" aria-hidden="true">
      <path d="M-17 -4.5H17Q18.4 -1 16.6 1.6C11.5 2 10 5.6 5 5.6H-5C-10 5.6 -11.5 2 -16.6 1.6Q-18.4 -1 -17 -4.5Z" />
      <path className="cut" d="M-9 -1.2L9 -2.1" />
      {[-7, -4.2, -1.4, 1.4, 4.2, 7].map((x) => (
        <circle key={x} className="cut" cx={x} cy={2.2} r={0.55} />
      ))}
    </svg>
  );
}

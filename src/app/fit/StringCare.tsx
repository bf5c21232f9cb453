/** What strings can do, where their tension is told. */
export function StringCare() {
  return (
    <p className="fit-care">
      <strong>Take care.</strong> Strings pull 100 to 135 N each, about 700 N together: wear eye protection,
      and slacken a string before you cut it. These figures compare designs, they are no guarantee of
      strength. Local rules and a qualified person come first.
    </p>
  );
}

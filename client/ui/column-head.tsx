/** So many letters stand on one line without making a column of figures wider than it need be. */
const SHORT = 8;

/** A column's head on two lines at most: left to itself a narrow column breaks it at every word. */
export function ColumnHead({ text }: { text: string }) {
  return (
    <th scope="col">
      {inTwoLines(text).map((line) => (
        <span key={line}>{line}</span>
      ))}
    </th>
  );
}

/** Parted between the words where the longer line is shortest. Whoever hears it hears a blank there. */
export function inTwoLines(text: string): string[] {
  const words = text.split(" ");
  if (text.length <= SHORT || words.length < 2) return [text];
  const partings = words.slice(1).map((_, i) => {
    const lines = [words.slice(0, i + 1).join(" "), words.slice(i + 1).join(" ")];
    return { lines, longest: Math.max(...lines.map(({ length }) => length)) };
  });
  const [first = text, second = ""] = partings.reduce((best, parting) =>
    parting.longest < best.longest ? parting : best,
  ).lines;
  return [`${first} `, second];
}

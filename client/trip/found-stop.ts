/** A stop as it stands in a file, before its numbers are judged. */
export interface FoundStop {
  line: number | undefined;
  fields: Record<string, unknown>;
}

/** Line of the nth match of a pattern in a text, from 1: readers of XML and JSON tell none themselves. */
export function linesWith(text: string, pattern: RegExp): number[] {
  const lines: number[] = [];
  let [line, at] = [1, 0];
  for (const { index } of text.matchAll(pattern)) {
    for (; at < index; at++) if (text.charCodeAt(at) === 10) line++;
    lines.push(line);
  }
  return lines;
}

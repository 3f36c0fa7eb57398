/** Whether one inserted, missing, wrong or swapped letter turns one text into the other (Damerau 1964). */
export function oneLetterApart(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1 || a === b) return false;
  let start = 0;
  while (start < a.length && a[start] === b[start]) start++;
  const [restA, restB] = [a.slice(start), b.slice(start)];
  if (a.length < b.length) return restA === restB.slice(1);
  if (a.length > b.length) return restA.slice(1) === restB;
  if (restA.slice(1) === restB.slice(1)) return true;
  return restA[0] === restB[1] && restA[1] === restB[0] && restA.slice(2) === restB.slice(2);
}

/** Tunes of each contributor, in their order. */
export function byContributor<T extends { contributor: string }>(
  tunes: readonly T[],
): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const tune of tunes) {
    const group = groups.get(tune.contributor);
    if (group) group.push(tune);
    else groups.set(tune.contributor, [tune]);
  }
  return groups;
}

/**
 * A setting that is a whole number; without one, or with an empty one, what stands in for it.
 * @throws Error that names the setting
 */
export function wholeNumber<Name extends string>(
  env: { readonly [name in Name]?: string | undefined },
  name: Name,
  otherwise: number,
): number {
  const text = env[name];
  if (text === undefined || text === "") return otherwise;
  if (!/^\d{1,9}$/.test(text)) throw new Error(`${name} must be a whole number, not "${text}".`);
  return Number(text);
}

import { unbroken } from "../../base/unbroken.ts";
import { format } from "../../units.ts";

/** What the report calls an air, such as "1,500 m", with its numbers as the page's language writes them. */
export function airName(label: string): string {
  return unbroken(label).replace(/\d+,\d{3}/g, (number) => format(Number(number.replace(",", ""))));
}

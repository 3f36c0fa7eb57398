import { decode } from "fast-png";
import type { Page } from "playwright-core";
import { pointOnMap } from "./open-page.ts";

/** Looks at the colours of a drawn map. */

export type Colour = [red: number, green: number, blue: number];

/** Colours of a square of the map about a point before anyone has moved it, CSS pixels. */
export async function coloursAt(page: Page, [lat, lon]: readonly [number, number], half = 6) {
  const { x, y } = await pointOnMap(page, lat, lon);
  const clip = { x: x - half, y: y - half, width: 2 * half, height: 2 * half };
  return coloursOf(await page.screenshot({ clip })).colours;
}

/** Colours of a picture, row by row. */
export function coloursOf(png: Uint8Array): { colours: Colour[]; width: number } {
  const { data, channels, width, height } = decode(png);
  const colours = Array.from({ length: width * height }, (_, i): Colour => {
    const at = i * channels;
    return [Number(data[at]), Number(data[at + 1]), Number(data[at + 2])];
  });
  return { colours, width };
}

export function middle(colours: Colour[]): Colour {
  const of = (channel: 0 | 1 | 2) =>
    colours.map((colour) => colour[channel]).sort((a, b) => a - b)[colours.length >> 1] as number;
  return [of(0), of(1), of(2)];
}

/** The legend as it is read: pump rates with their colours. */
export async function legendOf(page: Page): Promise<{ pump_Hz: number; colour: Colour }[]> {
  const steps = await page.locator(".legend ol li").evaluateAll((items) =>
    (items as HTMLElement[]).map((item) => ({
      pump_Hz: Number(item.dataset.value),
      hex: item.querySelector("rect")?.getAttribute("fill") ?? "",
    })),
  );
  return steps.map(({ pump_Hz, hex }) => ({
    pump_Hz,
    colour: [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16)) as Colour,
  }));
}

/** Colour that the legend gives to a pump rate, between its steps. */
export function colourOn(legend: Awaited<ReturnType<typeof legendOf>>, pump_Hz: number): Colour {
  const above = Math.max(
    1,
    legend.findIndex((step) => step.pump_Hz >= pump_Hz),
  );
  const [a, b] = [legend[above - 1], legend[above]];
  if (!a || !b) throw new Error(`The legend does not reach ${pump_Hz} Hz.`);
  const share = (pump_Hz - a.pump_Hz) / (b.pump_Hz - a.pump_Hz);
  return a.colour.map((value, i) => value + share * ((b.colour[i] as number) - value)) as Colour;
}

export const apart = (a: readonly number[], b: readonly number[]) =>
  Math.max(...a.map((value, i) => Math.abs(value - (b[i] as number))));

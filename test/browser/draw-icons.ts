import { readFileSync, writeFileSync } from "node:fs";
import { launchChromium } from "./chromium.ts";

/** Draws the app's PNG icons from its SVG mark: node test/browser/draw-icons.ts */
const PUBLIC = "client/public";
const PAPER = "#3c6350";

/** A mask may cut away all but the middle 80 %: the mark is drawn smaller on paper of its own colour. */
const ICONS = [
  { file: "icon-180.png", size_px: 180, share: 1 },
  { file: "icon-192.png", size_px: 192, share: 1 },
  { file: "icon-512.png", size_px: 512, share: 1 },
  { file: "icon-maskable-512.png", size_px: 512, share: 0.8 },
];

const mark = readFileSync(`${PUBLIC}/icon.svg`, "utf8");
const browser = await launchChromium({ webgl: false });
for (const { file, size_px, share } of ICONS) {
  const page = await browser.newPage({ viewport: { width: size_px, height: size_px } });
  const background = share < 1 || size_px === 180 ? PAPER : "transparent";
  await page.setContent(
    `<style>body{margin:0;display:grid;place-items:center;height:100vh;background:${background}}
    svg{width:${share * 100}vw}</style>${mark}`,
  );
  writeFileSync(`${PUBLIC}/${file}`, await page.screenshot({ omitBackground: true }));
  await page.close();
}
await browser.close();

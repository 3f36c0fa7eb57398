/** The longer side of a kept photo, pixels: enough to read a meter off it. */
const LONGER_SIDE_px = 1280;
const QUALITY = 0.8;
const DATA_URL = /^data:(image\/(?:jpeg|png|webp));base64,([A-Za-z0-9+/]*={0,2})$/;

/**
 * A photo scaled down and drawn anew, which leaves behind what the camera wrote into it, its position for instance.
 * @throws when the file is no picture this browser can read
 */
export async function scaledDown(file: Blob): Promise<Blob> {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, LONGER_SIDE_px / Math.max(picture.width, picture.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return new Promise((done, failed) => {
    canvas.toBlob(
      (blob) => (blob ? done(blob) : failed(new Error("not drawn"))),
      "image/jpeg",
      QUALITY,
    );
  });
}

export async function dataUrlOf(photo: Blob): Promise<string> {
  const bytes = new Uint8Array(await photo.arrayBuffer());
  let text = "";
  for (const byte of bytes) text += String.fromCharCode(byte);
  return `data:${photo.type};base64,${btoa(text)}`;
}

/** @returns undefined when it is no data URL of a picture */
export function photoOf(dataUrl: unknown): Blob | undefined {
  const [, type, coded] = (typeof dataUrl === "string" && DATA_URL.exec(dataUrl)) || [];
  if (type === undefined || coded === undefined || coded.length % 4 !== 0) return undefined;
  const bytes = Uint8Array.from(atob(coded), (letter) => letter.charCodeAt(0));
  return new Blob([bytes], { type });
}

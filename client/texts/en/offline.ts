/** Words about working without a network, in English. */
export const offline = {
  title: "Without a network",
  restsOn: (version: string, age: string) =>
    `Fit ${version}, ${age}. Charts drawn without the atlas show its curve and bands, and the tunes as they were last seen.`,
  unable:
    "This browser keeps nothing for use without a network (it needs HTTPS, and storage allowed).",
  waiting: "What is needed without a network is kept when this page is open for a moment.",
  saveData: "Your device asks to save data, so map and places are kept only when you say so.",
  keepNow: "Keep them now",
  keeping: (done: number, of: number) => `Keeping map and places: ${done} of ${of} files.`,
  cleared: "This browser had cleared what was kept here; it is being fetched again.",
  wiped:
    "This browser has just cleared what the page had kept: tunes that waited and receipts not saved elsewhere are gone. What is on the screen stays until you leave it.",
  kept: "Kept in this browser: start tunes, charts, places of over 15,000 people, elevations, and the map from afar.",
  full: "The browser has no room left to keep map and places. Start tunes still work without a network; free some space, then try again.",
  interrupted: "Page, map and places are not all kept yet: the connection broke off.",
  retry: "Try again",
  region: "All places of a country",
  regionHint: "Smaller places too, and the map one step nearer. It stays until you remove it.",
  size: (places: string, megabytes: string) => `${places} places, ${megabytes} MB`,
  save: "Save the country",
  saving: "Saving …",
  saved: "Saved",
  notSaved: "It could not be saved: the connection broke off.",
  remove: (country: string) => `Remove ${country}`,
  room: (used: string) => `In use: about ${used} MB.`,
  newRelease: "A new version of this page is ready.",
  newReleaseElsewhere:
    "A new version of this page is in use. What this tab has not opened yet may be missing until you reload it; what you typed stays.",
  oldPage:
    "A part of this page is no longer there: the atlas has a newer version. What you typed stays.",
  reload: "Reload",
  noPlacesKept: "No places are kept in this browser yet.",
  placesCredit: "Places and elevations: GeoNames, CC BY 4.0.",
  waits:
    "Kept in this browser: it is sent by itself, once, as soon as the atlas can be reached and this page is open.",
  waitingTitle: "Waiting to be sent",
  waitingCount: (n: number) =>
    n === 1 ? "1 tune waits to be sent." : `${n} tunes wait to be sent.`,
  arrived: (n: number) =>
    n === 1
      ? "The tune that waited has arrived; its receipt is in the list under Share."
      : `${n} tunes that waited have arrived; their receipts are in the list under Share.`,
  sendNow: "Send now",
  mend: "Put it back in the form",
  discard: "Discard it",
  discardSure: "Discard for good",
};

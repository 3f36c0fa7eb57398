/** Words about working without a network, in English. */
export const offline = {
  title: "Offline use",
  restsOn: (version: string, age: string) => `Fit ${version}, ${age}.`,
  unable: "This browser saves nothing for offline use (it needs HTTPS, and storage allowed).",
  waiting: "What you need offline is saved once this page has been open for a moment.",
  saveData: "Your device asks to save data, so map and places are only saved when you say so.",
  keepNow: "Save them now",
  keeping: (done: number, of: number) => `Saving map and places: ${done} of ${of} files.`,
  cleared: "This browser had deleted what was saved here; it is being fetched again.",
  wiped:
    "This browser has just deleted what the page had saved: tunes that were waiting and receipts not saved elsewhere are gone. What is on the screen stays until you leave it.",
  kept: "Saved in this browser: starting settings, charts, places of over 15,000 people, elevations, and the map seen from afar.",
  full: "The browser has no room left for map and places. Starting settings still work offline; free some space, then try again.",
  interrupted: "Page, map and places are not all saved yet: the connection broke off.",
  retry: "Try again",
  region: "All places of a country",
  regionHint: "Smaller places too, and the map one step closer. It stays until you remove it.",
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
  notKept: (name: string) =>
    `“${name}” is not among the places saved in this browser. Type the elevation instead; when you are online again, save the country under “Offline use”.`,
  noPlacesKept: "No places are saved in this browser yet. Type the elevation instead.",
  placesCredit: "Places and elevations: GeoNames, CC BY 4.0.",
  waits:
    "Saved in this browser: it is sent by itself, once, as soon as the atlas can be reached and this page is open.",
  waitingTitle: "Waiting to be sent",
  waitingCount: (n: number) =>
    n === 1 ? "1 tune is waiting to be sent." : `${n} tunes are waiting to be sent.`,
  arrived: (n: number) =>
    n === 1
      ? "The tune that was waiting has arrived; its receipt is in the list under Share."
      : `${n} tunes that were waiting have arrived; their receipts are in the list under Share.`,
  sendNow: "Send now",
  mend: "Put it back in the form",
  discard: "Discard it",
  discardSure: "Discard for good",
};

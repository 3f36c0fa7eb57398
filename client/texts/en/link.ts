/** Words of links that hold an answer; fetched with the first of them. */
export const linkWords = {
  send: "Send this answer",
  copy: "Copy the link",
  copied: "The link is copied.",
  copyByHand: "Copy it from here:",
  label: "Link that holds this answer",
  holds:
    "It holds elevation, night, heater and units, and the place if you chose it by name. It is not sent to the atlas; whoever gets it can read it.",
  ownTunes: (n: number) =>
    n === 1 ? "Put my own tune into the link." : `Put my ${n} own tunes into the link.`,
  withoutOwn: "Without, it opens with the average answer for such a heater.",
  opened: "Opened from a link.",
  aside: "Your own heater and your own question are left as they were.",
  take: "Ask this for my heater",
  leave: "Back to my own",
  refused: (label: string, given: string, instead: string) =>
    `${label}: the link says “${given}”, which cannot be. ${instead}`,
  instead: (value: string) => `${value} is used.`,
  usual: "The usual one is used.",
  yourUnits: "Your own units are used.",
  leftOut: "It is left out.",
  labels: {
    lat: "Latitude",
    lon: "Longitude",
    elevation_sd_m: "Uncertainty of the elevation",
    elevation_source: "Origin of the elevation",
    step_Hz: "Smallest step of the pump rate, Hz",
    step_rpm: "Smallest step of the fan speed, rpm",
    end: "Lowest or highest power",
    units: "Units",
    own: "Own tunes",
  },
};

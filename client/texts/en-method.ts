/** Words of the method page; fetched with it. A section without paragraphs is not shown. */
export const m = {
  title: "Method",
  formula: {
    pump: "pump rate",
    fan: "fan speed",
    heater: "heater",
    noise: "noise",
    letters: [
      ["a", "level: the average tune in air of 1.225 kg/m³"],
      ["b", "how the tune follows the air; perfect re-tuning gives 1"],
      ["ρ", "density of the air at the intake, kg/m³"],
      ["heater", "what sets one heater apart from the average"],
      ["noise", "what sets one tune apart from another of the same heater"],
    ] as [letter: string, meaning: string][],
    where: "Pump rate in Hz, fan speed in 1,000 rpm; one formula per heat class and end.",
  },
  sections: {
    air: { title: "The air", text: [] as string[] },
    model: {
      title: "The model",
      text: [
        "The fan moves volume, so air mass goes with fan speed times density; the pump moves volume per pulse. At an equal burn, pump rate per fan speed follows the density of the air.",
      ],
    },
    fit: {
      title: "The fit",
      text: [
        "One voice per contributor, and contributors of one place share √k votes. The start is found by consensus under a known spread, refined by bisquare weights; what lies beyond three robust spreads is set aside, with the reason, and comes back when later tunes support it.",
      ],
    },
    bands: {
      title: "The bands",
      text: [
        "The mean band comes from leaving out one contributor at a time; the new-heater band adds the spread between heaters.",
      ],
    },
    door: { title: "What is checked at the door", text: [] as string[] },
    limits: { title: "What it cannot know", text: [] as string[] },
    again: {
      title: "Make it again",
      text: [
        "Anyone can make the published figures from the CSV with npm run fit, and the study of the bands with npm run study.",
      ],
    },
  },
};

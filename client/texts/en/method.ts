import type { FIT_SETTINGS } from "../../../model/fit/settings.ts";
import { formulas } from "./method-formulas.ts";

/** Words of the method page; fetched with it. A section without paragraphs is not shown. */
export const m = (S: typeof FIT_SETTINGS) => ({
  title: "Method",
  screen: "The model in one screen of mathematics",
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
  short:
    "Below, y is the left side, x = ln(ρ/1.225), and r = y − a − b·x is how far a row lies from the line. φ is the normal density with standard deviation s; t is Student's t.",
  formulas,
  sections: {
    air: {
      title: "The air",
      text: [
        "Station pressure follows from elevation by ISO 2533, density of moist air by CIPM-2007. A sea-level pressure (QNH) is taken only under its own name, and reduced with the elevation.",
        "What is not given is assumed, and the doubt carried along as σ: 10 K for the temperature, 0.8 % for the weather's pressure and 0.5 % more per km, 25 points of humidity, and the elevation's own. A row with doubt counts for less; a question with doubt gets wider bands.",
      ],
    },
    model: {
      title: "Why this line",
      text: [
        "The fan moves volume, so the mass of air goes with fan speed times density; the pump moves volume per pulse. At an equal burn, pump rate per fan speed follows the density of the air: b = 1. A crowd shows a little less. Logarithms, because heaters differ by factors.",
      ],
    },
    fit: {
      title: "Why each part is there",
      text: [
        "One voice per contributor, or a key that floods is the crowd. √k at one place and time: a meeting, or an invented crowd, is not k independent witnesses.",
        "Trust by own variance: a row without a temperature is not wrong, it only knows less. An error in density moves a row along the line, so it counts times the slope. About its lowest, CO rises with the square of the distance; so a final CO above the usual says how far off the tune may be.",
        "A mixture, not a cut: a slip with a mechanism is recognised by where it puts the row, and what lies between kinds counts by its probability, so no row jumps from kind to kind when another comes.",
        "Bands of density as voices: high places have few rows and long leverage, and one crowded place must not buy the slope.",
        "Steps: the one comparison in which heaters do not differ. Where rows contradict them, the rows' say on the slope gives way, their say on the level stays, doubt is added and an alarm raised.",
        `A start by consensus: a line is looked for that most votes agree on, over a grid of slopes and levels, under a spread taken as known (${100 * (S.start_spread ?? Number.NaN)} %), so that a tight crowd gains nothing by being tight. From there kinds, shares, spreads and line are updated in turn until the line stands still.`,
        "Pooling: each class and end is fitted alone first; then slopes of other classes, and levels and spreads of other classes at the same end, become part of its belief, with the differences between classes that were seen. A class whose own rows contradict the others is left to itself.",
      ],
    },
    bands: {
      title: "Why these bands",
      text: [
        "Rows of one contributor belong together, so the covariance is taken over folds of contributors; without its small-sample correction it is too narrow for a small crowd. A few folds cannot tell how they scatter: the model's own covariance counts beside theirs.",
        "A covariance speaks of scatter. What untold wrong rows do to the line is not scatter: that is what the doubt beyond it is for.",
        "The spread is averaged over what the rows leave possible: its size, its growth away from x = 0 since heaters have slopes of their own, and its tails, since some owners are careless.",
        "Every version publishes claimed against observed coverage: each fold of contributors judged by the line of the others.",
      ],
    },
    aside: {
      title: "Rows set aside",
      text: [
        "Setting aside has no part in how the line is made. It follows from the row and the published fit alone, with a sentence that gives the numbers; when later tunes move the line or widen the scatter, the row comes back by itself.",
      ],
    },
    door: {
      title: "What is checked at the door",
      text: [
        "Bounds that physics sets, and slips with a name: elevation in feet, °F as °C, pulses a minute as Hz, a decimal point, ends swapped, fan speed doubled, halved, or in tens or hundreds, dose in mL, a sea-level pressure as station pressure. A slip is named when the row becomes plausible once it is undone. A missed slip is better than a held good row: what passes is left to the fit.",
      ],
    },
    alarms: {
      title: "Alarms",
      text: [
        "A steward is told when a new version does what honest crowds seldom do: the average tune moved since the version before; many contributors came together at one place in one month; rows contradict the steps within contributors; a second crowd beside the line would explain the rows much better. Simulated honest crowds cross each threshold less than once in a hundred fits.",
      ],
    },
    limits: {
      title: "What it cannot know",
      text: [
        "A lie that outnumbers the truth where it is told. Contributors with two tunes each, a true one by the sea and a false one up high, can be more than the honest there, and their own steps agree with their rows. Heaters with a smaller slope would send the same, so no estimator that sees only these rows can tell the two apart. The line follows them, the mean band misses the truth, and what protects the reader is the alarms and a steward.",
        "Liars with single rows, spread over places, have no steps on their side: the slope holds, the level gives way by about one per cent, the band is widened to match, and an alarm is raised.",
        "Elevations in feet that no place contradicts move rows along the line, where they look nearly honest: accuracy up high is lost, and an alarm is raised only sometimes.",
        "Slips that change the air and not the tune, °F taken as °C or a sea-level pressure as the station's, leave bias that the mean band does not cover. A class unlike all others leans towards what is believed until enough of its contributors have been high up. With very heavy tails the new-heater band holds a little less than it says. Crews who stop early and do not state their CO look like different heaters.",
        "Nothing in the model bends; beyond the densities seen it extrapolates, and says so. The new-heater band is for one more heater like those whose owners contribute. Bias terms and thresholds were set on crowds of our own invention: crowds that mislead in another way may be worse.",
      ],
    },
    again: {
      title: "Make it again",
      text: [
        `The fit's state is a fixed grid of weighted sums, for each of ${S.folds} folds. Each term is rounded to 2⁻³², so sums are exact: rows can be counted and taken out in any order, and the same rows give the same bits. A new tune changes its contributor's sums, and its neighbours' when their vote changes; the grid does not grow with the rows.`,
        "Anyone can make the published figures from the CSV with npm run fit, and the study of the bands with npm run study; same code, size and seed give the same figures. The repository's docs/method.md has the same matter with all numbers that were chosen.",
      ],
    },
    references: {
      title: "References",
      text: [
        "Beaton and Tukey 1974 (bisquare). Bell and McCaffrey 2002 (CR2). Cameron and Miller 2015 (clustered inference). Dempster, Laird and Rubin 1977 (expectation–maximisation). Gelman and Hill 2007 (partial pooling). Holland and Welsch 1977 (reweighting). Huber 1964. Mallows 1975 (weights by position). Rousseeuw and Leroy 1987 (breakdown and leverage). Satterthwaite 1946 (degrees of freedom). Theil 1950, Sen 1968. Varadhan and Roland 2008 (squared extrapolation).",
        "ISO 2533:1975. CIPM-2007: Picard, Davis, Gläser and Fujii 2008.",
      ],
    },
  },
  figures: {
    title: "Figures",
    intro:
      "Crowds were simulated whose truth is known. Error of the average tune at 0 / 1,500 / 3,000 / 4,500 m, root mean square in %, by estimator; then how often Hypsotune's bands held, in 100, at 0 / 4,500 m. Bisquare by votes puts the usual robust remedies together: one vote for each contributor, a start by consensus, Tukey's bisquare with a belief about the slope, a cut.",
    scenario: "Scenario",
    bands: { new_heater: "New heater", mean: "Mean" },
    band: (band: string, pct: string) => `${band} ${pct} %`,
    none: "–",
    table: "Table: errors and coverage by scenario",
    calibration: {
      intro:
        "How often the bands held, in 100, in the worst and the best of five airs (0 m at −20 °C; 0, 1,500, 3,000, 4,500 m): honest crowds of so many contributors, the truth of each run drawn from the belief.",
      contributors: "Contributors",
      table: "Table: coverage of the bands by number of contributors",
    },
  },
});

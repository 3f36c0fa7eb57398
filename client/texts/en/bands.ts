import { format } from "../../units.ts";

const signed = (points: number, decimals = 0) =>
  `${points < 0 ? "−" : points > 0 ? "+" : ""}${format(Math.abs(points), decimals)}`;

/** Words of the page on how well the bands hold; fetched with it, so that the first answer need not wait for them. */
export const b = {
  title: "How well the bands hold",
  loading: "Fetching the study …",
  intro:
    "A band is a span of pump rates with a promise. The mean band promises where the average tune lies; the new-heater band promises where one more heater, such as yours, will find its own. A 95 % band has held 95 in 100 when, of every hundred times it is drawn from fresh tunes, the truth lies inside it ninety-five times. Real tunes cannot show that, since nobody knows the truth behind them. So crowds are invented whose truth is known: careful owners, careless ones, and some who lie. Then the times the bands hold are counted.",
  simulated:
    "Everything on this page except the next section is simulated: nobody's real tune is in the rest.",
  published: {
    title: "What the published fit says",
    none: "Nobody has tuned yet: there is nothing to show.",
    means: (version: string) =>
      `Fit ${version}, from the tunes of this atlas. ±: two heaters in three are this close to the average in the same air, and two tunes in three of one heater this close to that heater's own average. A second crowd is a group of owners whose tunes agree with each other and not with the rest.`,
    group: "Heater size, power",
    owners: "Owners",
    tunes: "Tunes that count",
    between: "Between heaters",
    within: "Between tunes of one heater",
    never: "Owners who never re-tune",
    anything: "Owners whose tunes fit nothing",
    feet: "Elevations in feet",
    slips: "Tunes with other mistakes",
    crowd: "Second crowd",
    noCrowd: "none found",
    crowdIs: (probable: string, share: string, shift: string) =>
      `${probable} probable: ${share} of owners, ${shift}`,
    richer: (pct: string) => `${pct} richer`,
    leaner: (pct: string) => `${pct} leaner`,
  },
  fails: "Where they fail",
  verdict: (scenarios: number, narrow: number, wide: number, corridor: string) =>
    narrow + wide === 0
      ? `In none of the ${scenarios} scenarios is a 95 % band more than ${corridor} points off its claim in any of the airs looked at.`
      : `In ${scenarios - narrow - wide} of ${scenarios} scenarios both 95 % bands stay within ${corridor} points of their claim in every air looked at. In ${narrow} a band holds too rarely somewhere; in ${wide} more it only holds more often than it claims.`,
  beyondChance: (n: number, of: number) =>
    `${n} of these ${of} are further off than chance alone moves a single figure in so many runs.`,
  narrow: (n: number) => `Held too rarely: ${n}`,
  narrowMeans:
    "The band is too narrow there, and misleads. Worst first, each band where it held least.",
  wide: (n: number) => `Held more often than claimed: ${n}`,
  wideMeans:
    "The band is wider than it need be there: cautious, and less useful than it could be. Furthest off first, each band where it held most.",
  scenario: "Scenario",
  held: (pct: string, air: string) => `${pct} in 100 at ${air}`,
  show: (title: string) => `Show: ${title}`,
  how: "How it was simulated",
  facts: {
    code: "Code version",
    size: "Size",
    seed: "Seed",
    runs: "Runs",
    again: "Run it again",
  },
  sizes: { quick: "quick: fewer runs of every scenario", full: "full" },
  runs: (all: string, fewest: string, most: string, scenarios: number) =>
    `${all} in all: ${fewest} to ${most} of each of ${scenarios} scenarios`,
  again: { quick: "npm run study", full: "npm run study -- --full" },
  againNote: "Same code, size and seed give the same figures, on any number of cores.",
  bands: { new_heater: "New-heater band", mean: "Mean band" },
  families: {
    clean: "No mistakes",
    slips: "Typing mistakes",
    lazy: "Owners who never re-tune",
    flood: "One key that sends very many tunes",
    fakes: "Fake owners",
    spread: "Unequal spread",
    air: "Air not well known",
    pooling: "One heater size beside others",
    trade: "Crowds simulated from what heaters and owners do",
  },
  chosen: "One scenario",
  counts: (contributors: number, runs: string) =>
    `${contributors === 1 ? "1 owner" : `${format(contributors)} owners`}; ${runs} runs.`,
  truth: {
    fixed: "Every run has the same truth.",
    drawn: "Each run's truth is drawn from what the physics leads one to expect.",
  },
  chance: (points: string) =>
    `With so many runs, chance alone moves a 95 by up to ± ${points} points, 95 times in 100.`,
  coverage: "Claimed and observed coverage",
  coverageNote: (corridor: string) =>
    `Each line is one air: how many points more or fewer in 100 the band held than it claims. Zero is the claim; the shaded strip is within ${corridor} points of it.`,
  coverageChart: (band: string, scenario: string) =>
    `${band}: observed less claimed coverage at five airs. ${scenario}`,
  coverageTable: "Observed coverage, in 100",
  widthTable: "Half-width of the bands, %: the median over the runs",
  band: "Band",
  air: "Air",
  claims: (pct: string) => `Claims ${pct}`,
  claimedAxis: "Claimed, in 100",
  offAxis: "Observed less claimed, points",
  error: "Error of the average tune",
  errorNote:
    "Root-mean-square error against the known truth, in %; less is better. The scale is logarithmic: each step doubles, roughly. Estimators that could not answer in every run are left out.",
  errorChart: (scenario: string) =>
    `Error of the average tune by estimator at five airs. ${scenario}`,
  errorTable: "Error of the average tune, %",
  errorAxis: "Error, %",
  airAxis: "Air at this elevation, m",
  asideTable: "Rows set aside, in 100",
  honestAside: "Of honest rows",
  wrongAside: "Of wrong rows",
  estimator: "Estimator",
  breakdown: {
    title: "What share of wrong rows or owners each estimator withstands",
    note: (limit: string, air: string) =>
      `Simulated shares, in %, up to which the error of the average tune at ${air} stays below ${limit} %. <: the estimator does not withstand even the smallest that was simulated. ≥: it withstands even the largest.`,
    mistake: "What is wrong",
    below: (pct: string) => `< ${pct}`,
    least: (pct: string) => `≥ ${pct}`,
  },
  errorAt: (air: string) => `At ${air}`,
  tableOf: (what: string) => `Table: ${what}`,
  csv: (what: string) => `${what}: CSV`,
  signed: (points: number) => signed(points),
  off: (points: number) => `(${signed(points, 1)})`,
  offKey: "In brackets: points off the claim, where they are more than the strip allows.",
};

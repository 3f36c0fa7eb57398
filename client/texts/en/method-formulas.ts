/** Titles of the method page's formulas and what their letters mean, in the order in which they are shown. */
export const formulas = {
  belief: {
    title: "Belief before the first tune",
    note: "It makes an answer possible from none and stops mattering as rows come. The level a is believed from common practice, give or take 30 %.",
  },
  vote: {
    title: "Vote of a row",
    note: "k contributors are at home in the same place and month; n rows of one contributor share its vote; v is the row's own variance. σ is the standard deviation of its ln density: no temperature, a vague elevation. C is the final CO in ppm, where above the usual.",
  },
  kinds: {
    title: "Kinds of rows",
    note: "h is the probability that a row is honest, and what it counts by. The others: elevation in feet stated as metres, which moves it along the line by a known δ; carried unchanged from sea level, never re-tuned; anything else, spread evenly. The shares π are estimated along with h. ω is how many times as frequent feet for metres are in the row's band as in all, taken to be no more than half of it: U are the votes there, U_f those where the true sites of such rows would lie.",
  },
  voice: {
    title: "A band of density is one voice",
    note: "V is the honest votes of a band 0.05 wide in x, e their mean residual, τ the bands' own scatter about the line. However full, a band is worth no more than 1/τ², and less when it stands apart: ψ is the bisquare, nought where e is beyond four of its standard deviations.",
  },
  step: {
    title: "Steps within contributors",
    note: "Between two rows of one contributor whatever the heater has of its own cancels. The root is the standard deviation of that noise: how far tunes of one heater scatter, and how far heaters' own slopes differ.",
  },
  dispute: {
    title: "When rows contradict steps",
    note: "I is what rows and steps each know of the slope. Beyond z² = 2 the rows' say on the slope gives way, and if that is so after the first round, the level is looked for anew along its slope, among the votes near the density most tune at.",
  },
  covariance: {
    title: "Covariance of the line",
    note: "M is how the score would scatter were each vote a heater by itself, G how it scatters over F folds of contributors, P the prior's information. B is how the score changes with the line, the weights changing with it; g is a fold's score, corrected for its leverage (CR2).",
  },
  flattening: {
    title: "The slope that errors of density have flattened",
    note: "Every density is a little wrong and none says so: that makes the line flatter by f. W is the weight of rows and twice that of steps, I what is known of the slope, e its standard error. Once f shows beside e it is given back, about the rows' middle; the rest is doubt.",
  },
  bias: {
    title: "Doubt beyond scatter",
    note: "u is the share of votes that are not honest, x_m the rows' middle, Σ(x) the variance of the line at x. L² is what the mean band is made from.",
  },
  scatter: {
    title: "Scatter between heaters",
    note: "s, its growth γ away from x = 0 and the tails' degrees of freedom ν are averaged over their posterior on a grid; d degrees of freedom say how well s is known. N is the votes: few cannot show the growth.",
  },
  mean: {
    title: "Mean band",
    note: "σ is here the doubt about the air that is asked for, with Satterthwaite's degrees of freedom for the sum.",
  },
  newHeater: {
    title: "New-heater band",
    note: "The line's doubt and the scatter together.",
  },
  aside: {
    title: "A row is set aside",
    note: "If the scatter is what the fit says it is, that is one honest row in 200.",
  },
};

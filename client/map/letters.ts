/** Names, rates and numbers on the map: as large as a chart's, in the page's letters. */
export const LETTERS: { "text-font": string[]; "text-size": number } = {
  "text-font": ["Noto Sans"],
  "text-size": 13,
};

import type { ScenarioTitles } from "../en/scenarios.ts";

const clean = (owners: string) => `${owners} propietarios, sin errores`;
const drawn = (owners: string) =>
  `${clean(owners)}, valores verdaderos sacados de lo que la física hace esperar`;
const slips = (pct: string) =>
  `${pct} % de los ajustes: pies, coma decimal, la mitad o el doble, cifras sin sentido`;
const feet = (pct: string) => `${pct} % de los ajustes: altitud en pies dada como metros`;
const spread = (pct: string, times: string) =>
  `${pct} % de propietarios falsos repartidos por lugares altos, ${times} veces la frecuencia`;
const careful = (owners: string) =>
  `${owners} propietarios cuidadosos, cada uno con un calefactor; una cuarta parte no da la temperatura`;
const feetTyped = (pct: string) =>
  `De 200 propietarios, el ${pct} % escribe la altitud en pies donde se piden metros`;
const copies = (pct: string, before: string) =>
  `Tras ${before} propietarios honestos llegan otros 300; el ${pct} % de ellos pone lo que propone el atlas o se queda a medio camino`;

/** What the study's scenarios are called, in Spanish. */
export const scenarioTitles: ScenarioTitles = {
  "clean-3": clean("3"),
  "clean-8": clean("8"),
  "clean-50": clean("50"),
  "clean-200": clean("200"),
  "clean-1000": clean("1000"),
  "clean-drawn-3": drawn("3"),
  "clean-drawn-8": drawn("8"),
  "clean-drawn-30": drawn("30"),
  "clean-drawn-200": drawn("200"),
  "slips-10pct": slips("10"),
  "slips-20pct": slips("20"),
  "slips-30pct": slips("30"),
  "slips-40pct": slips("40"),
  "slip-feet-10pct": feet("10"),
  "slip-feet-20pct": feet("20"),
  "slip-feet-30pct": feet("30"),
  "slip-feet-40pct": feet("40"),
  "slip-ends-swapped-20pct": "20 % de los ajustes: potencia mínima y máxima intercambiadas",
  "slip-fahrenheit-20pct": "20 % de los ajustes: una temperatura en °F dada como °C",
  "lazy-40pct": "El 40 % de los propietarios nunca reajusta",
  "flood-70pct":
    "Un propietario envía el 70 % de todos los ajustes, 1,6 veces la frecuencia a 4000 m",
  "fakes-one-place-1.6x-40pct":
    "40 % de propietarios falsos en un lugar a 4000 m, 1,6 veces la frecuencia",
  "fakes-spread-1.25x-10pct": spread("10", "1,25"),
  "fakes-spread-1.25x-20pct": spread("20", "1,25"),
  "fakes-spread-1.25x-30pct": spread("30", "1,25"),
  "fakes-spread-1.25x-40pct": spread("40", "1,25"),
  "fakes-spread-1.6x-40pct": spread("40", "1,6"),
  "fakes-spread-1.1x-20pct": spread("20", "1,1"),
  "fakes-everywhere-1.35x-20pct":
    "20 % de propietarios falsos a todas las altitudes, 1,35 veces la frecuencia",
  "fakes-sly-two-high-20pct": `${spread("20", "1,25")}, cada uno con dos ajustes`,
  "fakes-sly-true-and-false-20pct": `${spread("20", "1,25")}, cada uno con un ajuste verdadero junto al mar`,
  "spread-heavy-tails": "Colas pesadas: t de Student con 3 grados de libertad",
  "spread-unequal-care": "La mitad de los calefactores se dispersa el triple que los demás",
  "air-no-temperature": "Falta la mitad de las temperaturas",
  "air-co-stated": "La mitad de los propietarios para entre 30 y 150 ppm y lo dice",
  "air-co-unstated": "La mitad de los propietarios para entre 30 y 150 ppm y no lo dice",
  "pooling-alike-3":
    "Un tamaño de calefactor con 3 propietarios junto a tres parecidos con 60 cada uno",
  "pooling-apart-30":
    "Un tamaño de calefactor con 30 propietarios, distinto de tres con 60 cada uno que coinciden",
  "trade-clean-8": careful("8"),
  "trade-clean-30": careful("30"),
  "trade-clean-200": careful("200"),
  "trade-clean-1000": careful("1000"),
  "trade-clubs":
    "Diez clubes de 12 ajustan en una reunión cada uno, con costumbres que difieren en un 6 %; 80 propietarios ajustan solos",
  "trade-no-temperature-cold":
    "Nadie da la temperatura, y las noches son 12 K más frías de lo normal",
  "trade-stopped-early-30":
    "El 30 % de los ajustes para cuando ya vale o la primera vez que el CO vuelve a subir; seis de cada diez propietarios lo dicen",
  "trade-doses-two-sizes-stated-100":
    "Bombas de dos tamaños; el 100 % de los propietarios da el combustible por pulso",
  "trade-doses-two-sizes-stated-0":
    "Bombas de dos tamaños; el 0 % de los propietarios da el combustible por pulso",
  "trade-feet-as-metres-20": feetTyped("20"),
  "trade-feet-as-metres-40": feetTyped("40"),
  "trade-ends-swapped-20":
    "De 200 propietarios, el 20 % intercambia potencia mínima y máxima en uno de sus ajustes",
  "trade-never-retuned-40":
    "De 200 propietarios, el 40 % ajusta una vez y da el mismo ajuste en todas partes",
  "trade-lies-everywhere-20":
    "De 200 propietarios, el 20 % da en todas partes 1,25 veces la frecuencia verdadera de la bomba",
  "trade-lies-lean-20":
    "De 200 propietarios, el 20 % da en todas partes 0,8 veces la frecuencia verdadera de la bomba",
  "trade-lies-high-40":
    "De 200 propietarios, el 40 % da 1,25 veces la frecuencia verdadera de la bomba y solo envía desde muy alto",
  "trade-lies-sea-true-high-false-20":
    "De 200 propietarios, el 20 % da 1,4 veces la frecuencia verdadera de la bomba en lo alto, y la verdadera junto al mar",
  "trade-copies-50-from-3": copies("50", "3"),
  "trade-copies-50-from-30": copies("50", "30"),
  "trade-copies-50-from-300": copies("50", "300"),
  "trade-copies-80-from-30": copies("80", "30"),
  "trade-as-people-are":
    "Un poco de todo: el 10 % comete algún error, el 3 % miente, el 15 % de los ajustes para demasiado pronto, dos clubes",
};

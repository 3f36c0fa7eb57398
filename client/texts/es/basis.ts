/** What an answer rests on, in Spanish. */
export const basisWords: typeof import("../en/basis.ts").basisWords = {
  title: "En qué se basa",
  tunes: (tunes: string, contributors: string, kW: string) =>
    `${tunes} ajustes de ${contributors} propietarios de calefactores de ${kW} kW.`,
  prior: (kW: string) =>
    `Aún no hay ajustes de calefactores de ${kW} kW: es una estimación con física y práctica común, por eso los intervalos son anchos.`,
  range: (from: string, to: string) => `Se hicieron en aire de ${from} a ${to} kg/m³.`,
  extrapolated:
    "Nadie ha ajustado aún en un aire así. Está extrapolado: fíate menos de los intervalos.",
  inside: "El aire de aquí queda dentro.",
  fit: (version: string, age: string) => `Cálculo ${version}, ${age}.`,
  priorFit: "Aún no hay ningún cálculo publicado.",
  ages: {
    now: "recién publicado",
    minutes: (n: number) => `de hace ${n} min`,
    hours: (n: number) => `de hace ${n} h`,
    days: (n: number) => `de hace ${n} días`,
  },
  air: (density: string, ratio: string, altitude: string) =>
    `Aire de ${density} kg/m³, el ${ratio} del estándar al nivel del mar: como a ${altitude} en un día estándar.`,
  assumed: { temperature: "temperatura", pressure: "presión", humidity: "humedad" },
  assumes: (what: string) => `Tomado de la atmósfera estándar o de valores habituales: ${what}.`,
  waysTitle: "Dos maneras de llegar",
  way: "Manera",
  heatLeft: "Calor, respecto al nivel del mar",
  keepFan: "Mismo ventilador",
  keepHeat: "Mismo calor",
  fanMakesUp:
    "La tabla redondea la frecuencia de la bomba y deja el ventilador como está. La respuesta de arriba cambia también el ventilador: así compensa el paso de la bomba.",
  fanShort: (limit: string) =>
    `El ventilador llega como mucho a unas ${limit} rpm: aquí no se alcanza todo el calor.`,
  figures: "Todas las cifras",
  exact: (hz) => `exactamente ${hz} Hz`,
  mean: "Ajuste medio",
  meanBand: (level) => `calefactor medio, seguro al ${level} %`,
  heaters: (level) => `${level} de cada 100 calefactores`,
  span: (lower, upper) => `de ${lower} a ${upper} Hz`,
  burn: (litres, kW) =>
    `${litres} L/h, unos ${kW} kW para el interior (se supone un rendimiento del 80 %)`,
  meanBandMine: (level) => `mejor ajuste de tu calefactor, seguro al ${level} %`,
  heatersMine: (level) => `tu calefactor, ${level} de cada 100 veces`,
  times: (level, lower, upper) => `${level} de cada 10 veces: ${lower}–${upper} Hz`,
};

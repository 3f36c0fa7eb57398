import { format } from "../../units.ts";

const signed = (points: number, decimals = 0) =>
  `${points < 0 ? "−" : points > 0 ? "+" : ""}${format(Math.abs(points), decimals)}`;

/** How well the bands hold, in Spanish. */
export const b: typeof import("../en/bands.ts").b = {
  title: "Cuánto aciertan los intervalos",
  loading: "Cargando el estudio …",
  intro:
    "Un intervalo es un tramo de frecuencias de la bomba con una promesa. El del calefactor medio promete dónde está el ajuste medio; el de un calefactor más, dónde encontrará el suyo un calefactor como el tuyo. Un intervalo del 95 % acierta cuando, de cada cien veces que se calcula con ajustes nuevos, el valor verdadero queda dentro noventa y cinco. Los ajustes reales no pueden mostrarlo, porque nadie conoce los valores verdaderos que hay detrás. Por eso se inventan grupos de propietarios cuyos valores verdaderos se conocen: cuidadosos, descuidados y algunos que mienten. Después se cuenta cuántas veces aciertan los intervalos.",
  simulated:
    "Todo en esta página menos el apartado siguiente es simulado: en el resto no hay ningún ajuste real.",
  published: {
    title: "Qué dice el cálculo publicado",
    none: "Nadie ha ajustado todavía: no hay nada que mostrar.",
    means: (version: string) =>
      `Cálculo ${version}, hecho con los ajustes de este atlas. ±: a esa distancia de la media, como mucho, están dos de cada tres calefactores en el mismo aire, y dos de cada tres ajustes de un mismo calefactor respecto a su propia media. Un segundo grupo son propietarios cuyos ajustes concuerdan entre sí y no con los demás.`,
    group: "Tamaño del calefactor, potencia",
    owners: "Propietarios",
    tunes: "Ajustes que cuentan",
    between: "Entre calefactores",
    within: "Entre ajustes de un calefactor",
    never: "Propietarios que nunca reajustan",
    anything: "Propietarios cuyos datos no encajan con nada",
    feet: "Altitudes en pies",
    slips: "Ajustes con otros errores",
    crowd: "Segundo grupo",
    noCrowd: "ninguno encontrado",
    crowdIs: (probable: string, share: string, shift: string) =>
      `probable al ${probable}: ${share} de los propietarios, ${shift}`,
    richer: (pct: string) => `${pct} más rica`,
    leaner: (pct: string) => `${pct} más pobre`,
  },
  fails: "Dónde fallan",
  verdict: (scenarios: number, narrow: number, wide: number, corridor: string) =>
    narrow + wide === 0
      ? `En ninguno de los ${scenarios} escenarios se aparta un intervalo del 95 % más de ${corridor} puntos de lo prometido en ninguna de las densidades del aire estudiadas.`
      : `En ${scenarios - narrow - wide} de ${scenarios} escenarios ambos intervalos del 95 % quedan a menos de ${corridor} puntos de lo prometido en todas las densidades del aire estudiadas. En ${narrow}, algún intervalo acierta demasiado poco en alguna; en otros ${wide}, solo más de lo que promete.`,
  beyondChance: (n: number, of: number) =>
    `${n} de estos ${of} se apartan más de lo que el azar por sí solo mueve una cifra con tantas simulaciones.`,
  narrow: (n: number) => `Aciertan demasiado poco: ${n}`,
  narrowMeans:
    "Ahí el intervalo es demasiado estrecho y engaña. Lo peor primero, cada intervalo donde menos acertó.",
  wide: (n: number) => `Aciertan más de lo prometido: ${n}`,
  wideMeans:
    "Ahí el intervalo es más ancho de lo necesario: prudente, pero menos útil de lo que podría ser. Lo más apartado primero, cada intervalo donde más acertó.",
  scenario: "Escenario",
  held: (pct: string, air: string) => `${pct} de cada 100 a ${air}`,
  show: (title: string) => `Mostrar: ${title}`,
  how: "Cómo se simuló",
  facts: {
    code: "Versión del código",
    size: "Tamaño",
    seed: "Semilla",
    runs: "Simulaciones",
    again: "Repetirlo",
  },
  sizes: { quick: "rápido: menos simulaciones de cada escenario", full: "completo" },
  runs: (all: string, fewest: string, most: string, scenarios: number) =>
    `${all} en total: de ${fewest} a ${most} de cada uno de los ${scenarios} escenarios`,
  again: { quick: "npm run study", full: "npm run study -- --full" },
  againNote:
    "El mismo código, tamaño y semilla dan las mismas cifras, con cualquier número de núcleos.",
  bands: { new_heater: "Intervalo de un calefactor más", mean: "Intervalo del calefactor medio" },
  families: {
    clean: "Sin errores",
    slips: "Errores al teclear",
    lazy: "Propietarios que nunca reajustan",
    flood: "Una clave que envía muchísimo",
    fakes: "Propietarios falsos",
    spread: "Dispersión desigual",
    air: "Aire mal conocido",
    pooling: "Un tamaño junto a otros",
    trade: "Usuarios simulados a partir de calefactores y costumbres",
  },
  chosen: "Un escenario",
  counts: (contributors: number, runs: string) =>
    `${contributors === 1 ? "1 propietario" : `${format(contributors)} propietarios`}; ${runs} simulaciones.`,
  truth: {
    fixed: "Todas las simulaciones tienen los mismos valores verdaderos.",
    drawn: "Los valores verdaderos de cada simulación se sacan de lo que la física hace esperar.",
  },
  chance: (points: string) =>
    `Con tantas simulaciones, el azar por sí solo mueve un 95 hasta ± ${points} puntos, 95 veces de cada 100.`,
  coverage: "Aciertos prometidos y observados",
  coverageNote: (corridor: string) =>
    `Cada línea es una densidad del aire: cuántos puntos de cada 100 acertó el intervalo de más o de menos. El cero es lo prometido; la franja sombreada abarca ${corridor} puntos.`,
  coverageChart: (band: string, scenario: string) =>
    `${band}: aciertos observados menos prometidos en cinco densidades del aire. ${scenario}`,
  coverageTable: "Aciertos observados, de cada 100",
  widthTable: "Media anchura de los intervalos, %: mediana de las simulaciones",
  band: "Intervalo",
  air: "Aire",
  claims: (pct: string) => `Promete ${pct}`,
  claimedAxis: "Prometido, de cada 100",
  offAxis: "Observado menos prometido, puntos",
  error: "Error del ajuste medio",
  errorNote:
    "Raíz del error cuadrático medio frente al valor verdadero, en %; menos es mejor. La escala es logarítmica: cada paso duplica, más o menos. Faltan los estimadores que no pudieron responder en todas las simulaciones.",
  errorChart: (scenario: string) =>
    `Error del ajuste medio por estimador en cinco densidades del aire. ${scenario}`,
  errorTable: "Error del ajuste medio, %",
  errorAxis: "Error, %",
  airAxis: "Aire a esta altitud, m",
  asideTable: "Filas que no cuentan, de cada 100",
  honestAside: "De las honestas",
  wrongAside: "De las erróneas",
  estimator: "Estimador",
  breakdown: {
    title: "Qué proporción de filas o propietarios erróneos aguanta cada estimador",
    note: (limit: string, air: string) =>
      `Proporciones simuladas, en %, hasta las que el error del ajuste medio a ${air} queda por debajo del ${limit} %. <: el estimador no aguanta ni la menor que se simuló. ≥: aguanta también la mayor.`,
    mistake: "Qué está mal",
    below: (pct: string) => `< ${pct}`,
    least: (pct: string) => `≥ ${pct}`,
  },
  errorAt: (air: string) => `A ${air}`,
  tableOf: (what: string) => `Tabla: ${what}`,
  csv: (what: string) => `${what}: CSV`,
  signed: (points: number) => signed(points),
  off: (points: number) => `(${signed(points, 1)})`,
  offKey:
    "Entre paréntesis: puntos de diferencia con lo prometido, donde son más de los que admite la franja.",
};

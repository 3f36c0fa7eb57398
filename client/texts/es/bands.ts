import { format } from "../../units.ts";

const signed = (points: number, decimals = 0) =>
  `${points < 0 ? "−" : points > 0 ? "+" : ""}${format(Math.abs(points), decimals)}`;

/** How well the bands hold, in Spanish. */
export const b: typeof import("../en/bands.ts").b = {
  title: "Qué tal aciertan las bandas",
  loading: "Trayendo el estudio …",
  intro:
    "Una banda es un tramo de frecuencias de la bomba con una promesa. La banda media promete dónde está el ajuste medio; la banda de un calefactor más, dónde encontrará el suyo un calefactor como el de usted. Una banda del 95 % ha cumplido 95 de 100 cuando, de cada cien veces que se dibuja con ajustes nuevos, la verdad queda dentro noventa y cinco. Los ajustes reales no pueden mostrarlo, porque nadie conoce la verdad que hay detrás. Por eso se inventan multitudes cuya verdad se conoce, cuidadosas, descuidadas y mentirosas, y se cuenta cuántas veces cumplen las bandas.",
  simulated:
    "Todo en esta página menos el apartado siguiente es simulado: en el resto no hay ajustes de nadie.",
  published: {
    title: "Qué dice el ajuste estadístico publicado",
    none: "Nadie ha ajustado todavía: no hay nada que contar.",
    means: (version: string) =>
      `Ajuste estadístico ${version}, hecho con los ajustes de este atlas. ±: a esa distancia de la media, como mucho, están dos de cada tres calefactores en el mismo aire, y dos de cada tres ajustes de un mismo calefactor. Un segundo grupo son propietarios cuyos ajustes concuerdan entre sí y no con los demás.`,
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
    noCrowd: "no se ve ninguno",
    crowdIs: (probable: string, share: string, shift: string) =>
      `probable al ${probable}: ${share} de los propietarios, ${shift}`,
    richer: (pct: string) => `${pct} más rico`,
    leaner: (pct: string) => `${pct} más pobre`,
  },
  fails: "Dónde fallan",
  verdict: (scenarios: number, narrow: number, wide: number, corridor: string) =>
    narrow + wide === 0
      ? `En ninguno de los ${scenarios} escenarios se aparta una banda del 95 % más de ${corridor} puntos de lo prometido en ninguno de los aires mirados.`
      : `En ${scenarios - narrow - wide} de ${scenarios} escenarios ambas bandas del 95 % quedan a menos de ${corridor} puntos de lo prometido en todos los aires mirados. En ${narrow} alguna banda cumple demasiado poco en algún aire; en ${wide}, solo más de lo que promete.`,
  beyondChance: (n: number, of: number) =>
    `${n} de estos ${of} se apartan más de lo que el azar solo mueve una cifra en tantas pasadas.`,
  narrow: (n: number) => `Cumplen demasiado poco: ${n}`,
  narrowMeans:
    "Ahí la banda es demasiado estrecha y engaña. Lo peor primero, cada banda donde menos cumplió.",
  wide: (n: number) => `Cumplen más de lo prometido: ${n}`,
  wideMeans:
    "Ahí la banda es más ancha de lo necesario: prudente y menos útil de lo que podría. Lo más apartado primero, cada banda donde más cumplió.",
  scenario: "Escenario",
  held: (pct: string, air: string) => `${pct} de cada 100 a ${air}`,
  show: (title: string) => `Mostrar: ${title}`,
  how: "Cómo se simuló",
  facts: {
    code: "Versión del código",
    size: "Tamaño",
    seed: "Semilla",
    runs: "Pasadas",
    again: "Repetirlo",
  },
  sizes: { quick: "rápido: menos pasadas de cada escenario", full: "completo" },
  runs: (all: string, fewest: string, most: string, scenarios: number) =>
    `${all} en total: de ${fewest} a ${most} de cada uno de los ${scenarios} escenarios`,
  again: { quick: "npm run study", full: "npm run study -- --full" },
  againNote:
    "El mismo código, tamaño y semilla dan las mismas cifras, con cualquier número de núcleos.",
  bands: { new_heater: "Banda de un calefactor más", mean: "Banda media" },
  families: {
    clean: "Sin errores",
    slips: "Deslices al escribir",
    lazy: "Quienes nunca reajustan",
    flood: "Una clave que inunda",
    fakes: "Participantes falsos",
    spread: "Dispersión desigual",
    air: "Aire mal conocido",
    pooling: "Una clase junto a otras",
    trade: "Usuarios simulados a partir de calefactores y costumbres",
  },
  chosen: "Un escenario",
  counts: (contributors: number, runs: string) =>
    `${contributors === 1 ? "1 participante" : `${format(contributors)} participantes`}; ${runs} pasadas.`,
  truth: {
    fixed: "Todas las pasadas tienen la misma verdad.",
    drawn: "La verdad de cada pasada se saca de lo que la física hace esperar.",
  },
  chance: (points: string) =>
    `Con tantas pasadas, el azar solo mueve un 95 hasta ± ${points} puntos, 95 veces de cada 100.`,
  coverage: "Cobertura prometida y observada",
  coverageNote: (corridor: string) =>
    `Cada línea es un aire: cuántos puntos de cada 100 cumplió la banda de más o de menos. El cero es lo prometido; la franja sombreada abarca ${corridor} puntos.`,
  coverageChart: (band: string, scenario: string) =>
    `${band}: cobertura observada menos prometida en cinco aires. ${scenario}`,
  coverageTable: "Cobertura observada, de cada 100",
  widthTable: "Media anchura de las bandas, %: mediana de las pasadas",
  band: "Banda",
  air: "Aire",
  claims: (pct: string) => `Promete ${pct}`,
  claimedAxis: "Prometido, de cada 100",
  offAxis: "Observado menos prometido, puntos",
  error: "Error del ajuste medio",
  errorNote:
    "Error cuadrático medio frente a la verdad conocida, en %; menos es mejor. La escala es logarítmica: cada paso duplica, más o menos. Faltan los estimadores que no pudieron responder en todas las pasadas.",
  errorChart: (scenario: string) =>
    `Error del ajuste medio por estimador en cinco aires. ${scenario}`,
  errorTable: "Error del ajuste medio, %",
  errorAxis: "Error, %",
  airAxis: "Aire a esta altitud",
  asideTable: "Filas apartadas, de cada 100",
  honestAside: "De las honestas",
  wrongAside: "De las erróneas",
  estimator: "Estimador",
  breakdown: {
    title: "Qué proporción de filas o participantes erróneos aguanta cada estimador",
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

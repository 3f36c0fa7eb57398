/** Palabras del calefactor propio: la línea sobre cada vista, y lo que añade a la respuesta. */
export const heaterWords = {
  line: {
    mine: "Mi calefactor",
    none: "Ningún calefactor elegido",
    fans: (low: string, high: string) => `ventilador a ${low} y ${high} rpm`,
    usual: (low: string, high: string) => `ventilador habitual, ${low} y ${high} rpm`,
    own: (n: number) =>
      n === 0 ? "sin ajustes propios" : n === 1 ? "1 ajuste propio" : `${n} ajustes propios`,
    choose: "Calefactor",
    average: "Calefactor medio, ventilador habitual",
    intro:
      "Cada vista toma tamaño, ventilador y combustible por pulso del calefactor elegido aquí. Se queda en este navegador.",
  },
  step: "Paso más pequeño de la bomba, Hz (opcional)",
  fanStep: "Paso más pequeño del ventilador, rpm (opcional)",
  settings: {
    add: "Añadir mis ajustes actuales",
    title: "Mis ajustes actuales",
    how: "¿Cómo se encontraron?",
    meter: "Con un medidor de CO: ajusté hasta que el CO fue mínimo",
    guess: "Ajustes de fábrica, o a ojo",
    meterWhy: "Pasan a ser un ajuste propio: las respuestas para su calefactor se afinan.",
    guessWhy: "Verá cómo funcionaría con ellos en otro lugar. No cambian la respuesta.",
    next: "Seguir",
    keep: "Guardar estos ajustes",
    kept: "Guardado. La respuesta muestra cómo funcionaría con ellos.",
  },
  fromMine: (name: string) =>
    `Tamaño, ventilador y combustible por pulso como los tiene guardados para «${name}».`,
  lead: {
    right: "Tal como está, su calefactor funcionaría aquí más o menos bien.",
    one: (shift: string) => `Tal como está, su calefactor funcionaría aquí ${shift}`,
    both: (low: string, high: string) =>
      `Tal como está, su calefactor funcionaría aquí ${low} a la potencia mínima y ${high} a la máxima`,
    rich: (pct: string) => `un ${pct} % rico`,
    lean: (pct: string) => `un ${pct} % pobre`,
    even: "más o menos bien",
    richMeans: "hollín, más monóxido de carbono, más consumo",
    leanMeans: "menos calor, arranque difícil, y la llama puede apagarse",
    since: (date: string) => `Ajustes del ${date}.`,
  },
  best: (low: string, high: string) =>
    `Mejor ajuste, 8 de cada 10 veces: ${low} Hz a la potencia mínima, ${high} Hz a la máxima.`,
  basis: {
    own: (tunes: string, owners: string, own: number, mine: string, others: string) =>
      `De ${tunes} ajustes de ${owners} propietarios y ${own} suyos: ±${mine} % en vez de ±${others} %.`,
    ownAlone: (own: number, mine: string, others: string) =>
      `De ${own === 1 ? "1 ajuste suyo" : `${own} ajustes suyos`} y una estimación física: ±${mine} % en vez de ±${others} %.`,
  },
  aside: {
    of: (date: string) => `Su ajuste del ${date} no cuenta.`,
    ofEnd: (date: string, end: string) => `Su ajuste del ${date} no cuenta en: ${end}.`,
    richer:
      "Es mucho más rico de lo esperado. Revise su bomba, ventilador y altitud, y el tamaño del calefactor.",
    leaner:
      "Es mucho más pobre de lo esperado. Revise su bomba, ventilador y altitud, y el tamaño del calefactor.",
    slip: "Parece mal escrito. Revise sus cifras y unidades en la bitácora.",
    contradict: (dates: string, end: string) =>
      `Sus ajustes del ${dates} se contradicen en: ${end}. Los ajustes de un calefactor rara vez difieren tanto. Revise sus cifras; hasta que otro diga cuál es correcto, el margen es amplio.`,
    and: "y",
  },
  near: {
    title: "Ajustes en aire parecido",
    columns: ["Hz", "rpm", "Altitud", "Temperatura", "CO en ppm", "Mes", "Frente al promedio"],
    none: (kW: string) => `Nadie ha compartido aún un ajuste de un calefactor de ${kW} kW.`,
    offline: "No se puede llegar al atlas: no se muestran ajustes en aire parecido.",
    loading: "Buscando ajustes en aire parecido …",
    pair: (low: string, high: string) => `${low} / ${high}`,
    below: (ppm: string) => `< ${ppm}`,
    unknown: "–",
    rich: (pct: string) => `un ${pct} % más rico`,
    lean: (pct: string) => `un ${pct} % más pobre`,
    even: "igual",
    note: "Potencia mínima / máxima. El CO de medidores distintos no se compara.",
  },
};

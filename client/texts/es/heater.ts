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
      "Cada vista toma tamaño, ventilador, combustible por pulso y medidor del calefactor elegido aquí. Se queda en este navegador.",
  },
  step: "Paso más pequeño de la bomba, Hz (opcional)",
  fanStep: "Paso más pequeño del ventilador, rpm (opcional)",
  settings: {
    add: "Añadir mis ajustes actuales",
    title: "Mis ajustes actuales",
    how: "¿Cómo se encontraron?",
    meter: "Con un medidor de CO: ajusté hasta que el CO fue el más bajo",
    guess: "Ajustes de fábrica, o a ojo",
    meterWhy: "Pasan a ser un ajuste propio: las respuestas para tu calefactor se afinan.",
    guessWhy: "Verás cómo funcionaría con ellos en otro lugar. No cambian la respuesta.",
    keep: "Guardar estos ajustes",
    kept: "Guardado. La respuesta muestra cómo funcionaría con ellos.",
  },
  meterKinds: {
    "room alarm": "detector de interior",
    "portable meter": "medidor portátil",
    "flue analyser": "analizador de humos",
    other: "otro",
  },
  fromMine: (name: string) =>
    `Tamaño, ventilador y combustible por pulso como los tienes guardados para «${name}».`,
  lead: {
    right: "Tal como está, tu calefactor funcionaría aquí más o menos bien.",
    one: (shift: string) => `Tal como está, la bomba daría aquí ${shift}`,
    both: (low: string, high: string) =>
      `Tal como está, la bomba daría aquí ${low} a potencia mínima y ${high} a máxima`,
    rich: (pct: string) => `un ${pct} % de más`,
    lean: (pct: string) => `un ${pct} % de menos`,
    even: "más o menos lo justo",
    richMeans: "hollín, más monóxido de carbono, más consumo",
    leanMeans: "menos calor, arranque difícil, y la llama puede apagarse",
    bothMean: "hollín, más CO, y la llama puede apagarse",
    since: (date: string) => `Ajustes del ${date}.`,
  },
  best: (low: string, high: string) =>
    `Mejor ajuste, 8 de cada 10 veces: ${low} Hz a la potencia mínima, ${high} Hz a la máxima.`,
  basis: {
    own: (tunes: string, owners: string, own: number, mine: string, others: string) =>
      `De ${tunes} ajustes de ${owners} propietarios y ${own === 1 ? "1 tuyo" : `${own} tuyos`}: ±${mine} % en vez de ±${others} %.`,
    ownAlone: (own: number, mine: string, others: string) =>
      `De ${own === 1 ? "1 ajuste tuyo" : `${own} ajustes tuyos`} y una estimación con física: ±${mine} % en vez de ±${others} %.`,
  },
  aside: {
    of: (date: string) => `Tu ajuste del ${date} no cuenta.`,
    ofEnd: (date: string, end: string) => `Tu ajuste del ${date} no cuenta en: ${end}.`,
    richer:
      "Es mucho más rico de lo esperado. Revisa la bomba, el ventilador, la altitud y el tamaño del calefactor.",
    leaner:
      "Es mucho más pobre de lo esperado. Revisa la bomba, el ventilador, la altitud y el tamaño del calefactor.",
    apart:
      "En una potencia es mucho más rico de lo esperado y en la otra mucho más pobre. Revisa la bomba, el ventilador, la altitud y el tamaño del calefactor.",
    slip: (figures: string) => `Parece mal tecleado: ${figures}. Corrígelo en la bitácora.`,
    figures: {
      pump_Hz: "frecuencia de la bomba",
      fan_rpm: "velocidad del ventilador",
      elevation_m: "altitud",
      temperature_C: "temperatura",
      pressure_hPa: "presión",
      dose_uL: "combustible por pulso",
    },
    contradict: (dates: string, end: string) =>
      `Tus ajustes del ${dates} se contradicen en: ${end}. Los ajustes de un calefactor rara vez difieren tanto. Revisa sus cifras; hasta que otro diga cuál es correcto, el intervalo es ancho.`,
    and: "y",
  },
  near: {
    title: "Ajustes en aire parecido",
    columns: [
      "Hz",
      "Altitud",
      "Temperatura",
      "Frente a la media",
      "rpm",
      "CO en ppm",
      "Mes",
      "Mostrar",
    ],
    none: (kW: string) => `Nadie ha compartido aún un ajuste de un calefactor de ${kW} kW.`,
    offline: "No se puede conectar con el atlas: no se muestran ajustes en aire parecido.",
    loading: "Buscando ajustes en aire parecido …",
    pair: (low: string, high: string) => `${low} / ${high}`,
    unknown: "–",
    rich: (pct: string) => `un ${pct} % más rica`,
    lean: (pct: string) => `un ${pct} % más pobre`,
    even: "igual",
    map: "mapa",
    chart: "gráfico",
    onMap: (set: string, place: string) => `${set} Hz a ${place}: mostrar en el mapa`,
    inChart: (set: string, place: string) => `${set} Hz a ${place}: mostrar en el gráfico`,
    note: "Potencia mínima / máxima, primero el aire más parecido. El CO de medidores distintos no se compara.",
  },
};

/** The page on how settings scale, in Spanish. */
export const scalingWords: typeof import("../en/scaling.ts").scalingWords = {
  title: "Cómo dependen los ajustes del aire",
  end: "Potencia",
  over: "Según",
  density: "densidad del aire",
  elevation: "altitud",
  overOptions: { density: "densidad", elevation: "altitud" },
  densityAxis: "Densidad del aire, kg/m³",
  elevationAxis: (unit: string) => `Altitud, ${unit} (curva: atmósfera estándar)`,
  rateAxis: "Frecuencia de la bomba por velocidad del ventilador, Hz por 1000 rpm",
  unit: "Altitud en",
  key: {
    curve: "ajuste medio",
    mean: "calefactor medio, seguro al 95 %",
    inner: "8 de cada 10 calefactores",
    outer: "95 de cada 100 calefactores",
    kept: "un ajuste que cuenta",
    rejected: "no cuenta: demasiado lejos",
    held: "retenido a la entrada",
    line: "une los ajustes de un propietario",
  },
  beyond: (n: number) =>
    n === 1
      ? "Un ajuste queda fuera de este gráfico y se marca en su borde."
      : `${n} ajustes quedan fuera de este gráfico y se marcan en su borde.`,
  beyondHere: (n) => `${n} fuera de este gráfico`,
  reason: "Por qué",
  showRows: (n: number) => (n === 1 ? "Mostrar 1 fila" : `Mostrar ${n} filas`),
  restInCsv: (n: number) => `Las primeras ${n}; el archivo CSV de abajo las tiene todas.`,
  aside: "Lo que no cuenta, y por qué",
  asideNone: "Todos los ajustes cuentan.",
  notAmong: "El ajuste que buscas no está entre los dibujados aquí.",
  points: (shown: string, all: string) =>
    shown === all ? `${all} ajustes.` : `${shown} de ${all} ajustes, una muestra uniforme.`,
  seen: (when: string) => `Ajustes como este navegador los vio por última vez, ${when}.`,
  unseen:
    "Este navegador nunca ha visto los ajustes de este tamaño: llegan en cuanto haya conexión con el atlas.",
  table: "Los puntos en una tabla",
  tableOf: (what: string) => `Tabla: ${what}`,
  columns: [
    "Altitud",
    "Densidad, kg/m³",
    "Bomba, Hz",
    "Ventilador, rpm",
    "Hz por 1000 rpm",
    "Estado",
  ],
  status: { kept: "cuenta", rejected: "no cuenta", held: "retenido" },
  chartLabel: (end: string, over: string) =>
    `Frecuencia de la bomba por velocidad del ventilador, ${end}, según la ${over}`,
  prior: "Aún no hay ajustes de este tamaño: la curva es una estimación de la física.",
  read: "Leer el gráfico",
  readOptions: { curve: "curva", tunes: "ajustes" },
  readCurve: "A lo largo de la curva",
  readTunes: "Ajuste por ajuste",
  readHint: "Mueve el control o señala el gráfico: aquí aparecen sus cifras.",
  curveReading: (density, elevation, rate, bands) =>
    `${density} kg/m³, como a ${elevation}: media ${rate} Hz por 1000 rpm; seguro al 95 % ${bands[0]}; 8 de cada 10 calefactores ${bands[1]}; 95 de cada 100 ${bands[2]}.`,
  tuneReading: (density, elevation, pump, fan, rate, status) =>
    `${density} kg/m³, ${elevation}: ${pump} Hz a ${fan} rpm, ${rate} Hz por 1000 rpm; ${status}.`,
  residuals: {
    title: "Residuos: cuánto se aparta cada ajuste del cálculo",
    means:
      "Comparado con lo que el cálculo espera a esa densidad del aire. Un buen cálculo no deja tendencia; los tonos son los intervalos para un calefactor más.",
    none: "Aquí no hay ajustes: solo se dibujan los intervalos.",
    axis: "Desviación, %",
    chart: (end) => `Residuos, ${end}, según la densidad del aire`,
    read: "Ajuste por ajuste, del aire menos denso al más denso",
    reading: (off, tune) => `${off} %. ${tune}`,
  },
  csv: {
    points: "Guardar los ajustes en CSV",
    curve: "Guardar la curva en CSV",
  },
  curveTable: "La curva en una tabla",
  curveColumns: [
    "Densidad, kg/m³",
    "Altitud",
    "Hz por 1000 rpm",
    "Media, segura al 95 %",
    "8 de cada 10 calefactores",
    "95 de cada 100 calefactores",
  ],
};

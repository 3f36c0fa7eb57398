/** The Scaling view, in Spanish. */
export const scalingWords: typeof import("../en/scaling.ts").scalingWords = {
  title: "Cómo siguen los ajustes al aire",
  end: "Extremo",
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
    mean: "dónde está la media, con un 95 % de seguridad",
    inner: "80 de cada 100 calefactores",
    outer: "95 de cada 100 calefactores",
    kept: "un ajuste que cuenta",
    rejected: "apartado por el ajuste estadístico",
    held: "retenido a la entrada",
    line: "une los ajustes de un participante",
  },
  beyond: (n: number) =>
    n === 1
      ? "Un ajuste queda fuera de este gráfico y se marca en su borde."
      : `${n} ajustes quedan fuera de este gráfico y se marcan en su borde.`,
  beyondHere: (n) => `${n} fuera de este gráfico`,
  reason: "Por qué",
  showRows: (n: number) => (n === 1 ? "Mostrar 1 fila" : `Mostrar ${n} filas`),
  restInCsv: (n: number) => `Las primeras ${n}; todas están en el CSV de abajo.`,
  aside: "Apartado, y por qué",
  asideNone: "No se apartó nada.",
  points: (shown: string, all: string) =>
    shown === all ? `${all} ajustes.` : `${shown} de ${all} ajustes, una muestra uniforme.`,
  seen: (when: string) => `Ajustes como este navegador los vio por última vez, ${when}.`,
  unseen: "Los ajustes de esta clase nunca se vieron en este navegador: vienen con el atlas.",
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
  status: { kept: "cuenta", rejected: "apartado", held: "retenido" },
  chartLabel: (end: string, over: string) =>
    `Frecuencia de la bomba por velocidad del ventilador, ${end}, según la ${over}`,
  prior: "Aún no hay ajustes de esta clase: la curva es solo física.",
  read: "Leer en el gráfico",
  readOptions: { curve: "curva", tunes: "ajustes" },
  readCurve: "A lo largo de la curva",
  readTunes: "Ajuste por ajuste",
  readHint: "Mueva el control o señale el gráfico: aquí se lee lo que dice en ese punto.",
  curveReading: (density, elevation, rate, bands) =>
    `${density} kg/m³, como a ${elevation}: media ${rate} Hz por 1000 rpm; 95 % de seguridad ${bands[0]}; 80 de cada 100 calefactores ${bands[1]}; 95 de cada 100 ${bands[2]}.`,
  tuneReading: (density, elevation, pump, fan, rate, status) =>
    `${density} kg/m³, ${elevation}: ${pump} Hz a ${fan} rpm, ${rate} Hz por 1000 rpm; ${status}.`,
  residuals: {
    title: "Residuos: cuánto se aparta cada ajuste del ajuste estadístico",
    means:
      "Según la densidad del aire, frente a lo que allí se espera. Un buen ajuste estadístico no deja tendencia; los tonos son las bandas para un calefactor más.",
    none: "Aquí no hay ajustes a mano: solo se dibujan las bandas.",
    axis: "Desviación, %",
    chart: (end) => `Residuos, ${end}, según la densidad del aire`,
    read: "Ajuste por ajuste, del aire tenue al denso",
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
    "Media, 95 % de seguridad",
    "80 de cada 100 calefactores",
    "95 de cada 100 calefactores",
  ],
};

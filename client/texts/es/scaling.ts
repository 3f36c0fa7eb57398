/** The Scaling view, in Spanish. */
export const scalingWords: typeof import("../en/scaling.ts").scalingWords = {
  title: "Cómo siguen los ajustes al aire",
  end: "Extremo",
  over: "Según",
  density: "densidad del aire",
  elevation: "altitud",
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
      ? "Uno queda fuera del marco y se dibuja en su borde."
      : `${n} quedan fuera del marco y se dibujan en su borde.`,
  reason: "Por qué",
  showRows: (n: number) => (n === 1 ? "Mostrar 1 fila" : `Mostrar ${n} filas`),
  restInCsv: (n: number) => `Las primeras ${n}; todas están en el CSV, en Datos.`,
  aside: "Apartado, y por qué",
  asideNone: "No se apartó nada.",
  points: (shown: string, all: string) =>
    shown === all ? `${all} ajustes.` : `${shown} de ${all} ajustes, una muestra uniforme.`,
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
};

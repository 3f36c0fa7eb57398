/** Palabras del mapa. */
export const mapWords: typeof import("../en/map.ts").mapWords = {
  title: "Frecuencia de bomba sugerida en el mapa",
  shown: "Los colores muestran",
  aspects: { rate: "frecuencia de bomba", sure: "lo segura que es" },
  end: "Extremo mostrado",
  night: "Noche en el mapa",
  nightUnit: "Noche en el mapa: unidad",
  standardAir: "atmósfera estándar",
  legends: {
    rate: (end: string) => `Frecuencia de bomba, ${end}, y dónde la pide esta noche`,
    sure: (end: string) =>
      `Cuánto puede desviarse en una estufa más, ${end}: el 95 % queda dentro de`,
  },
  atElevation: (elevation: string) => `a ${elevation}`,
  nowhere: "no en esta noche",
  hatched: "fuera del aire en que alguien ha ajustado",
  cellMark: "ajustes de aquí, con su número",
  none: "Este navegador no dibuja mapas (WebGL está desactivado o falta), así que aquí hay una imagen fija. Todo lo demás funciona.",
  lost: "El mapa perdió su superficie de dibujo; vuelve cuando el navegador le dé otra. Hasta entonces, una imagen fija.",
  again: "Dibujar el mapa de nuevo",
  picture: "Imagen fija de las frecuencias de bomba sugeridas en todo el mundo",
  pictureFailed: "No se pudieron obtener las alturas de la imagen.",
  builtInGround:
    "La fuente de alturas configurada no ha dado todas las teselas: las sustituye el relieve incorporado, más tosco.",
  builtInBasemap: "El mapa base configurado no se puede dibujar: lo sustituye el incorporado.",
  loading: "Cargando el mapa …",
  click:
    "Un clic o un toque da un ajuste inicial para ese punto. Con el teclado: las flechas mueven el mapa, + y − acercan y alejan, Intro toma su centro.",
  takeMiddle: "Ajuste inicial para el centro del mapa",
  cells: "De dónde vienen los ajustes",
  cellsNone: "Todavía no hay ajustes.",
  cellColumns: [
    "Celda cerca de",
    "Altura media",
    "Ajustes",
    "Participantes",
    "Extremo bajo",
    "Extremo alto",
  ],
  shift: (pct: number) =>
    Math.abs(pct) < 0.5
      ? "como el cálculo"
      : `${Math.abs(pct).toFixed(0)} % ${pct > 0 ? "rico" : "pobre"}`,
  foot: {
    close: "Cerrar",
    asking: "Buscando la altura …",
    position: (lat: string, lon: string) => `${lat}, ${lon}`,
    from: (distance: string, name: string) => `A ${distance} de ${name}`,
    goToAnswer: "Ir a la respuesta",
  },
  cell: {
    title: (lat: string, lon: string) => `Ajustes cerca de ${lat}, ${lon}`,
    count: (tunes: number, contributors: number) =>
      `${tunes === 1 ? "1 ajuste" : `${tunes} ajustes`} de ${contributors === 1 ? "1 participante" : `${contributors} participantes`}`,
    between: (lowest: string, highest: string) => `de ${lowest} a ${highest}`,
    since: (oldest: string, newest: string) => `de ${oldest} a ${newest}`,
    loading: "Trayéndolos …",
    show: "Mostrar estos ajustes",
    list: "Valores de estos ajustes",
    columns: [
      "Mes",
      "Altura",
      "Temperatura del aire",
      "Clase de potencia",
      "Extremo bajo",
      "Extremo alto",
    ],
    set: (hz: string, rpm: string) => `${hz} Hz a ${rpm} rpm`,
    co: (ppm: string) => `${ppm} ppm`,
    coBelow: (ppm: string) => `menos de ${ppm} ppm`,
    coUnknown: "sin lectura de CO",
    unknown: "no indicada",
    newest: (shown: number, of: string) => `Los ${shown} más recientes de ${of}.`,
    meters:
      "CO más bajo tal como lo mostró el medidor de cada uno: solo se compara con el mismo medidor en el mismo punto.",
  },
  credit: "GeoNames (CC BY 4.0), Natural Earth",
  label: "Mapa de las frecuencias de bomba sugeridas",
};

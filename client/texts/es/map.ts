/** Palabras del mapa. */
export const mapWords: typeof import("../en/map.ts").mapWords = {
  title: "Frecuencia de la bomba sugerida en el mapa",
  shown: "Los colores muestran",
  aspects: { rate: "frecuencia", sure: "precisión", wanted: "ajustes que faltan" },
  end: "Potencia",
  night: "Noche en el mapa",
  nightUnit: "Noche en el mapa: unidad",
  standardAir: "atmósfera estándar",
  legends: {
    rate: (end: string) =>
      `Frecuencia de la bomba, ${end}, y a qué altitud va bien con esta temperatura`,
    sure: (end: string) =>
      `Cuánto puede desviarse, ${end}: dentro quedan 95 de cada 100 calefactores`,
    wanted: (end: string) =>
      `Cuántos puntos porcentuales se estrecharía con un ajuste más el intervalo del calefactor medio, ${end}`,
  },
  ofAverage:
    "Colores y líneas son los del calefactor medio. Al tocar cuentan también tus ajustes propios.",
  atElevation: (elevation: string) => `a ${elevation}`,
  nowhere: "no se da a esta temperatura",
  hatched: "aún sin ajustes en un aire así",
  contour: "misma frecuencia a lo largo de la línea",
  cellMark: "cuántos ajustes son de aquí",
  none: "Este navegador no dibuja mapas (WebGL está desactivado o falta), así que aquí hay una imagen fija. Todo lo demás funciona.",
  lost: "El navegador ha dejado de dibujar el mapa; si puede, vuelve solo. Hasta entonces, una imagen fija.",
  again: "Dibujar el mapa de nuevo",
  picture: "Imagen fija de las frecuencias de la bomba sugeridas en todo el mundo",
  pictureFailed: "No se pudieron cargar las altitudes de la imagen.",
  builtInGround:
    "La fuente de altitudes de este atlas no lo ha dado todo: en su lugar se ve el relieve incorporado, más tosco.",
  builtInBasemap:
    "El mapa base de este atlas no se puede dibujar: en su lugar se ve el incorporado.",
  loading: "Cargando el mapa …",
  click:
    "Un clic o un toque da los ajustes iniciales de ese punto. Con el teclado: las flechas mueven el mapa, + y − acercan y alejan, Intro toma su centro.",
  beyond:
    "Más cerca de lo que llegan los datos: entre los lugares con nombre, altitudes y colores son estimaciones.",
  wanted: {
    title: "Dónde hace más falta un ajuste",
    means: (heater: string, end: string) =>
      `Un ajuste más en un aire así, de alguien que aún no ha compartido ninguno, estrecharía el intervalo del calefactor medio (${heater}, ${end}):`,
    row: (elevation: string, temperature: string, now: string, then: string) =>
      `A ${elevation} y ${temperature}: de ±${now} % a ±${then} %`,
    none: "Un ajuste más cambiaría poco en cualquier parte: el calefactor medio se conoce bien.",
  },
  estimated: "De cerca, el color del terreno entre los lugares con nombre es una estimación.",
  takeMiddle: "Ajustes iniciales para el centro del mapa",
  cells: "De dónde vienen los ajustes",
  cellsNone: "Todavía no hay ajustes.",
  cellsWithin: (n: number) => `${n} celdas: pulsa para verlas`,
  cellColumns: [
    "Celda cerca de",
    "Altitud media",
    "Ajustes",
    "Propietarios",
    "Potencia mínima",
    "Potencia máxima",
  ],
  shift: (pct: number) =>
    Math.abs(pct) < 0.5
      ? "como se espera"
      : `${Math.abs(pct).toFixed(0)} % más ${pct > 0 ? "rica" : "pobre"}`,
  foot: {
    close: "Cerrar",
    asking: "Buscando la altitud …",
    position: (lat: string, lon: string) => `${lat}, ${lon}`,
    from: (distance: string, name: string) => `A ${distance} de ${name}`,
    goToAnswer: "Ir a la respuesta",
  },
  cell: {
    gone: "Los ajustes que buscas ya no se muestran en el mapa.",
    title: (lat: string, lon: string) => `Ajustes cerca de ${lat}, ${lon}`,
    count: (tunes: number, contributors: number) =>
      `${tunes === 1 ? "1 ajuste" : `${tunes} ajustes`} de ${contributors === 1 ? "1 propietario" : `${contributors} propietarios`}`,
    between: (lowest: string, highest: string) => `de ${lowest} a ${highest}`,
    since: (oldest: string, newest: string) => `de ${oldest} a ${newest}`,
    loading: "Cargándolos …",
    show: "Mostrar estos ajustes",
    list: "Valores de estos ajustes",
    columns: [
      "Mes",
      "Altitud",
      "Temperatura del aire",
      "Tamaño del calefactor",
      "Potencia mínima",
      "Potencia máxima",
    ],
    set: (hz: string, rpm: string) => `${hz} Hz a ${rpm} rpm`,
    coUnknown: "sin lectura de CO",
    unknown: "sin indicar",
    newest: (shown: number, of: string) => `Los ${shown} más recientes de ${of}.`,
    wide: "Sus propietarios han ajustado en varios lugares. Para que nadie pueda seguirlos, aparecen juntos en una zona de unos 330 km de ancho, con el año.",
    meters:
      "CO más bajo tal como lo mostró el medidor de cada uno: solo se compara con el mismo medidor en el mismo punto.",
  },
  credit: "GeoNames (CC BY 4.0), Natural Earth",
  label: "Mapa de las frecuencias de la bomba sugeridas",
};

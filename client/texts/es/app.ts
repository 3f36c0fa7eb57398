/** The page itself and its first views, in Spanish. */
export const t: typeof import("../en/app.ts").t = {
  name: "Hypsotune",
  tagline: "Ajustes de partida para calefactores de aire diésel",
  skip: "Saltar al contenido",
  language: "Idioma",
  demo: "Datos inventados: ningún ajuste de aquí es real.",
  views: {
    atlas: "Atlas",
    trip: "Viaje",
    onsite: "En el sitio",
    card: "Tarjeta",
    logbook: "Diario",
    share: "Compartir",
    scaling: "Escala",
    data: "Datos",
  },
  low: "Extremo bajo",
  high: "Extremo alto",
  endWord: { low: "extremo bajo", high: "extremo alto" },
  unit: "unidad",
  rpm: "rpm",
  loading: "Consultando el atlas …",
  partMissing:
    "No se pudo cargar esta parte de la página. Con conexión, vuelva a cargar la página.",
  unreachable:
    "No se llega al atlas. Las cifras se apoyan en el ajuste estadístico guardado en este navegador.",
  notReached: "No se llega al atlas. Compruebe la conexión e inténtelo de nuevo.",
  noFit:
    "No se llega al atlas, y este navegador aún no ha guardado ningún ajuste estadístico. Inténtelo de nuevo con conexión.",
  retry: "Intentar de nuevo",
  alarm: {
    open: "¡Alarma de CO dentro!",
    title: "Todos fuera. Ya.",
    call: "Después, desde fuera, llame a emergencias:",
    local: "o al número local",
    outside: "Cuando todos estén fuera",
  },
  safety: {
    title: "El monóxido de carbono mata",
    more: "Todas las advertencias",
    brief:
      "Solo un punto de partida. El monóxido de carbono mata: ajuste al aire libre y mantenga una alarma en marcha donde se duerme.",
    notice:
      "Solo un punto de partida, nunca un ajuste acabado. El monóxido de carbono mata. Ajuste al aire libre, vigile el medidor junto al escape y tenga en marcha una alarma de monóxido de carbono aparte y certificada dondequiera que se duerma: nunca el medidor usado en el escape. Que la alarma calle no significa que no lo haya. Alarma, dolor de cabeza o mareo: todos fuera al aire fresco y después pida ayuda.",
    notFor: "No sirve para",
    not_for: [
      "ajustar en un garaje, una tienda, una cabina o cualquier espacio cerrado, ni con alguien dormido dentro",
      "sustituir los ajustes del fabricante donde no se permite cambiarlos: algunas instalaciones homologadas no se pueden modificar en absoluto",
      "juzgar si se puede respirar el aire sin peligro",
    ],
    deferTo: "Esto va primero",
    defer_to: [
      "el manual del fabricante",
      "la normativa local y las reglas de homologación de vehículos y embarcaciones",
      "los profesionales autorizados de calefacción y electricidad",
    ],
  },
  site: {
    title: "Dónde",
    place: "Lugar",
    placeHint: "Población, puerto o campamento",
    elevation: "Altitud",
    positionLabel: "O donde está usted",
    position: "Usar mi posición",
    positionNote: "Su posición no sale de este aparato.",
    positionDenied: "Este aparato no dice su posición. Escriba una altitud o un lugar.",
    positionWait: "Esperando la posición …",
    noPlace: (name: string) =>
      `Ningún lugar se llama «${name}». Revise la ortografía o escriba la altitud.`,
    similar: (name: string) =>
      `Ningún lugar se llama «${name}». Elija un nombre parecido o escriba la altitud.`,
    results: (n: number) => (n === 1 ? "1 lugar" : `${n} lugares`),
    unknownElevation: "altitud desconocida",
    estimate: (half: string) =>
      `Estimada: en 95 de cada 100 puntos así acierta a ± ${half}. Un cartel, un mapa o el GPS de un teléfono lo saben mejor: escríbala.`,
    outOfRange: (lowest: string, highest: string) => `El atlas responde de ${lowest} a ${highest}.`,
    notNumber: "Escriba un número.",
  },
  air: {
    title: "Aire de la noche",
    tunedTitle: "Aire al ajustar",
    tuned: "Temperatura al ajustar",
    temperature: "Temperatura nocturna",
    temperatureShort: "Cuenta tanto como la altitud.",
    temperatureWhy:
      "Cuenta tanto como la altitud: de −20 a +20 °C hay un 16 % de densidad, como 1500 m. Si queda vacía se toma la de la atmósfera estándar y las bandas se ensanchan.",
    pressure: "Presión",
    pressureKind: "Esta presión es",
    station: "la del lugar",
    qnh: "la del nivel del mar (QNH)",
    pressureWhy:
      "La del lugar es la que marca un barómetro donde usted está. Los partes del tiempo dan la del nivel del mar (QNH): tomar una por otra cuesta más del 20 % a 1700 m.",
    looksQnh: (standard: string) =>
      `A esta altitud un barómetro marca unos ${standard}. ¿Es la cifra del nivel del mar? Entonces elija QNH.`,
    humidity: "Humedad relativa, %",
  },
  heater: {
    title: "Calefactor",
    heat: "Clase de potencia",
    heatOption: (kW: number) => `${kW} kW`,
    lowFan: "Velocidad del ventilador, extremo bajo, rpm",
    highFan: "Velocidad del ventilador, extremo alto, rpm",
    fanWhy:
      "La clase de potencia es la potencia máxima de la etiqueta. Si quedan vacías se toman las velocidades usuales de la clase: las suyas son mejores.",
    dose: "Dosis, µL por pulso",
    doseWhy: "Combustible por pulso de la bomba, si lo sabe: añade consumo y calor.",
  },
  answer: {
    title: "Ajuste de partida",
    at: (place: string, elevation: string) => `${place}, ${elevation}`,
    elevationOnly: (elevation: string) => `a ${elevation}`,
    air: (density: string, ratio: string, altitude: string) =>
      `Aire de ${density} kg/m³, el ${ratio} del estándar al nivel del mar: como ${altitude} en la atmósfera estándar.`,
    assumed: { temperature: "temperatura", pressure: "presión", humidity: "humedad" },
    assumes: (what: string) => `Tomado de la atmósfera estándar o de valores usuales: ${what}.`,
    fanAt: (rpm: string) => `ventilador a ${rpm} rpm`,
    exact: (hz: string) => `exactamente ${hz} Hz`,
    mean: "Ajuste medio",
    meanBand: (level: string) => `media, con un ${level} % de seguridad`,
    heaters: (level: string) => `${level} de cada 100 calefactores`,
    range: (lower: string, upper: string) => `de ${lower} a ${upper} Hz`,
    spoken: (end: string, hz: string, level: string, lower: string, upper: string) =>
      `Empiece con ${hz} hercios en el ${end}; ${level} de cada 100 calefactores están entre ${lower} y ${upper}.`,
    burn: (litres: string, kW: string) =>
      `${litres} L/h, unos ${kW} kW para el interior (se supone un rendimiento del 80 %)`,
    waysTitle: "Dos maneras de llegar",
    way: "Manera",
    heatLeft: "Calor, respecto al nivel del mar",
    keepFan: "Mantener el ventilador, bajar la bomba",
    keepHeat: "Mantener el calor, subir el ventilador",
    fanShort: (limit: string) =>
      `El ventilador llega a unas ${limit} rpm: aquí no se alcanza todo el calor.`,
    cannot: "Estas cifras no casan entre sí. Revise las velocidades y la presión.",
  },
  basis: {
    title: "En qué se apoya",
    tunes: (tunes: string, contributors: string, kW: string) =>
      `${tunes} ajustes de ${contributors} participantes de la clase de ${kW} kW.`,
    prior: (kW: string) =>
      `Aún no hay ajustes de la clase de ${kW} kW: esto es solo física y práctica común, y las bandas son anchas.`,
    range: (from: string, to: string) => `Su aire: de ${from} a ${to} kg/m³.`,
    extrapolated:
      "Fuera del aire en que alguien haya ajustado: extrapolado. Aquí confíe menos en las bandas.",
    inside: "Este aire queda dentro.",
    fit: (version: string, age: string) => `Ajuste estadístico ${version}, ${age}.`,
    priorFit: "Aún no se ha publicado ningún ajuste estadístico.",
    ages: {
      now: "recién publicado",
      minutes: (n: number) => `de hace ${n} min`,
      hours: (n: number) => `de hace ${n} h`,
      days: (n: number) => `de hace ${n} días`,
    },
  },
};

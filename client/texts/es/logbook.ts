/** The Logbook view, in Spanish. */
export const logbookWords: typeof import("../en/logbook.ts").logbookWords = {
  title: "Bitácora",
  intro:
    "Tus calefactores y lo que hiciste con ellos. Todo se queda en este navegador: no se envía nada, salvo que compartas un ajuste.",
  empty:
    "Aún no hay calefactor. Añade el tuyo y anota sus ajustes y limpiezas, o abre un archivo exportado.",
  lost: (n: number) =>
    `Este navegador ha vaciado su memoria: ${n === 1 ? "se ha perdido 1 entrada" : `se han perdido ${n} entradas`}. Abre abajo tu última exportación.`,
  lostUnderstood: "Entendido",
  mayWipe: "Un navegador puede vaciar su memoria. Exporta de vez en cuando.",
  store: {
    forbidden:
      "Este navegador prohíbe guardar datos aquí (ventana privada o datos de sitios bloqueados): la bitácora no se puede guardar. Permite el almacenamiento para esta página o usa otra ventana.",
    full: "A este navegador no le queda sitio: no se guardó y nada ha cambiado. Libera espacio o quita fotos y vuelve a intentarlo.",
  },
  heater: {
    title: "Calefactores",
    choose: "Calefactor",
    add: "Añadir un calefactor",
    edit: "Cambiar este calefactor",
    remove: "Quitar este calefactor",
    removeSure: (n: number) =>
      n === 1 ? "Quitarlo con su entrada" : `Quitarlo con sus ${n} entradas`,
    removed: (name: string) => `${name}: quitado.`,
    name: "Cómo lo llamas",
    tank: "Depósito, L (opcional)",
    dose: "Combustible por pulso, µL (opcional)",
    lowFan: "Velocidad del ventilador, potencia mínima, rpm (opcional)",
    highFan: "Velocidad del ventilador, potencia máxima, rpm (opcional)",
    supply: "Tensión de alimentación, V (opcional)",
    hours: "Horas de marcha hasta ahora (opcional)",
    line: (kW: string) => `${kW} kW`,
    save: "Guardar este calefactor",
  },
  kinds: { tune: "Ajuste", cleaning: "Limpieza", note: "Nota" },
  entry: {
    title: "Entradas",
    none: "Aún no hay entradas de este calefactor.",
    add: {
      tune: "Anotar un ajuste",
      cleaning: "Anotar una limpieza",
      note: "Escribir una nota",
    },
    newTitle: { tune: "Un ajuste", cleaning: "Una limpieza", note: "Una nota" },
    at: "Fecha y hora",
    hours: "Horas en el contador (opcional)",
    hoursWhy: "Con ellas se ve cómo cambia el calefactor con el tiempo.",
    fuel: "Combustible desde la última entrada, L (opcional)",
    notes: "Notas (opcional)",
    photo: "Foto (opcional)",
    photoHint: "Se reduce, y se borra lo que la cámara escribió sobre el lugar y el dispositivo.",
    photoDrop: "Quitar la foto",
    photoBad: "Este archivo no es una imagen legible.",
    photoAlt: (when: string) => `Foto de la entrada del ${when}`,
    site: "Dónde",
    meter: "Medidor",
    meterWhy: "El CO solo se compara con el mismo medidor en el mismo punto.",
    meterName: "Cómo lo llamas (opcional)",
    reading: "El medidor muestra",
    readings: {
      co_ppm: "una lectura",
      co_below_ppm: "nada: muy poco CO",
      co_above_ppm: "su tope: demasiado CO",
    },
    readingOf: {
      co_ppm: "CO más bajo, ppm",
      co_below_ppm: "Lectura más baja que puede mostrar, ppm",
      co_above_ppm: "Lectura más alta que puede mostrar, ppm",
    },
    save: "Guardar esta entrada",
    cancel: "Cancelar",
    edit: "Cambiar",
    remove: "Quitar",
    editThis: (what: string) => `Cambiar: ${what}`,
    removeThis: (what: string) => `Quitar: ${what}`,
    removed: (what: string) => `Quitado: ${what}.`,
    undo: "Deshacer",
    undone: "Recuperado.",
    kept: "Guardado en este navegador.",
    fix: "Revisa los campos marcados.",
    looks: "Esto parece mal tecleado",
    anyway:
      "Puedes guardarlo tal cual: las respuestas no lo tienen en cuenta hasta que lo corrijas.",
    saveAsIs: "Guardarlo tal cual",
    keptAside: "Guardado, pero las respuestas no lo tienen en cuenta: parece mal tecleado.",
    setTo: (hz: string, rpm: string) => `${hz} Hz, ${rpm} rpm`,
    power: (setting: string) => `nivel de potencia ${setting}`,
    swept: (hz: string, lower: string, upper: string) =>
      `mínimo cerca de ${hz} Hz, entre ${lower} y ${upper} Hz`,
    density: (density: string) => `aire ${density} kg/m³`,
    atHours: (hours: string) => `a las ${hours} h de marcha`,
    fuelLine: (litres: string) => `${litres} L desde la última entrada`,
    meterLine: (kind: string, distance: string) => `${kind}, a ${distance} m del escape`,
  },
  check: {
    missing: "Rellena este campo.",
    number: "debe ser un número",
    between: (least: string, most: string) => `debe estar entre ${least} y ${most}`,
    classStep: "debe ir en pasos de 0,5 kW",
    when: "debe ser fecha y hora como 2026-11-05T20:30:00Z",
    oneReading:
      "falta uno de los tres datos: la lectura, o la más baja o la más alta que puede mostrar el medidor",
    oneReadingOnly: "solo puede darse uno de los tres datos",
    pair: "latitud y longitud van juntas",
    onePressure: "presión del lugar o del nivel del mar, no ambas",
    bothEnds: "Un ajuste tiene un lugar, una potencia mínima y una máxima.",
    unknown: "no se conoce aquí: mal escrito o de una versión más nueva",
    text: "debe ser texto, y no demasiado largo",
    choice: "no es ninguna de las opciones",
    photo: "debe ser una URL de datos de una imagen JPEG, PNG o WebP de 2 MB como mucho",
  },
  share: {
    share: "Compartir este ajuste",
    shareThis: (what: string) => `Compartir este ajuste: ${what}`,
    what: (elevation: string) =>
      `Se envía: calefactor, aire, los valores a ambas potencias con su CO y cómo los encontraste, medidor, mes y ${elevation}; de la ubicación, solo el centro de su celda del mapa. No se envía: nombre del lugar, fecha, notas, foto, horas.`,
    cannot:
      "El medidor llegó a su tope, así que falta la lectura de CO: este ajuste no se puede compartir.",
    looks: "Parece un error al teclear. Cambia la entrada o envíala así: quedaría retenida.",
    cancel: "No compartir",
    shared: "Compartido",
    waits: "Pendiente de envío; se envía solo, una vez, en cuanto haya conexión con el atlas.",
    gone: "Iba a compartirse, pero ni espera ni tiene recibo en este navegador: compártelo de nuevo.",
    discard: "No enviarlo después de todo",
    revise: "Corregir el ajuste compartido",
    revised: (verdict: string) => `Corregido: ${verdict}.`,
    arrived: (verdict: string) => `Ha llegado: ${verdict}.`,
    receiptNotKept: "El recibo se guarda con la entrada.",
    notThere: "El atlas ya no tiene ese ajuste: la entrada ya no figura como compartida.",
    openShare: "Los recibos y más están en «Compartir».",
  },
  ownSteps: {
    title: "Qué aportó cada ajuste propio",
    means:
      "Cuánto se aparta el mejor ajuste de la respuesta, hacia un lado u otro, 8 de cada 10 veces: antes de cualquier ajuste propio y después de cada uno, donde se encontró el más reciente.",
    list: "Ajustes propios, del más antiguo al más reciente",
    columns: ["Tras el ajuste del", "8 de cada 10 veces", "Cambio"],
    before: "ninguno aún",
    average: "calefactor medio",
    narrower: (points: string) => `${points} puntos más estrecho`,
    wider: (points: string) => `${points} puntos más ancho: casa mal con los demás`,
    same: "sin cambio",
    aside: "no cuenta: mira en Inicio",
  },
  drift: {
    picture: {
      end: "Potencia mostrada",
      none: "Cuando al menos dos ajustes indiquen las horas (o el combustible), aquí habrá un gráfico.",
      mixture: "Mezcla",
      mixtureLabel: (end: string) => `Gráfico: mezcla a ${end} según el uso del calefactor.`,
      mixtureAxis: "Más rica (+) o más pobre (−) que el primer ajuste, %",
      co: "Monóxido de carbono",
      coLabel: (end: string) => `Gráfico: CO a ${end} según el uso del calefactor.`,
      coAxis: "CO más bajo, ppm",
      axis: { hours: "Horas de uso", fuel_L: "Combustible desde la última limpieza, L" },
      read: "Ajuste por ajuste",
      same: "como el primer ajuste.",
      richer: (pct: string) => `${pct} % más rica que en el primer ajuste.`,
      leaner: (pct: string) => `${pct} % más pobre que en el primer ajuste.`,
      apart: "No se puede comparar con la más reciente.",
      means:
        "Mezcla: frecuencia de la bomba por velocidad del ventilador, sin lo que pide el aire. CO: los puntos llenos se comparan con la lectura más reciente; los anillos no (otro medidor o sitio, otra mezcla, o antes de una limpieza); los triángulos quedan fuera de la escala del medidor.",
      line: "La línea es la tendencia de los puntos llenos; las frases de arriba dicen si significa algo.",
      cleaning: "Línea discontinua: limpieza.",
      leftOut: (n: number) =>
        n === 1 ? "Falta 1 ajuste sin horas." : `Faltan ${n} ajustes sin horas.`,
    },
    title: "¿Ha cambiado el calefactor?",
    howTitle: "En qué se nota",
    how: "Los ajustes se comparan con los del mismo calefactor según la densidad del aire; el CO, solo con mezcla parecida, con el mismo medidor en el mismo punto y desde la última limpieza. Se tiene en cuenta que se mira tras cada entrada: aunque no haya cambios, una frase así aparece en menos de 5 de cada 100 inviernos. Los intervalos valen en 95 de cada 100 casos, por mucho que se mire.",
    none: "Aún no se puede decir nada: hacen falta varios ajustes desde la última limpieza, con horas (o combustible) y medidor.",
    co: (from: string, to: string, amount: string) =>
      `Tu mejor lectura con esta mezcla subió de ${from} a ${to} ppm en ${amount}: es más probable que sea hollín o una toma de aire obstruida que el aire.`,
    coQuiet: (n: number, amount: string) =>
      `${n} lecturas comparables en ${amount}: ninguna subida clara de CO.`,
    change: (factor: string, lower: string, upper: string) =>
      `Cambio: ${factor} veces; entre ${lower} y ${upper} veces.`,
    changeOpen: (factor: string) =>
      `Cambio hasta ahora: ${factor} veces; muy pocas lecturas para un intervalo.`,
    richer: (pct: string, amount: string) =>
      `Con aire parecido, tu mejor frecuencia de la bomba subió un ${pct} % en ${amount}: ha cambiado algo que no es el aire.`,
    leaner: (pct: string, amount: string) =>
      `Con aire parecido, tu mejor frecuencia de la bomba bajó un ${pct} % en ${amount}: entra menos aire, o ha cambiado otra cosa.`,
    mixtureQuiet: (n: number, amount: string) =>
      `${n} ajustes en ${amount}: ningún cambio claro de la mejor mezcla.`,
    mixtureInterval: (lower: string, upper: string) => `Entre ${lower} y ${upper} %.`,
    amount: {
      hours: (n: string) => `${n} horas`,
      fuel_L: (n: string) => `${n} L de combustible`,
    },
    floor: (n: number) =>
      n === 1
        ? "1 lectura quedó por debajo de lo que muestra el medidor: aquí no cuenta, y una subida se nota más tarde."
        : `${n} lecturas quedaron por debajo de lo que muestra el medidor: aquí no cuentan, y una subida se nota más tarde.`,
    ceiling: (n: number) =>
      n === 1
        ? "1 lectura quedó por encima de lo que muestra el medidor: aquí no cuenta."
        : `${n} lecturas quedaron por encima de lo que muestra el medidor: aquí no cuentan.`,
    risen: (ppm: string, floor: string) =>
      `El medidor muestra ahora ${ppm} ppm donde antes no mostraba nada (menos de ${floor}). Una sola lectura no prueba nada: lee otra vez.`,
    noMeter: (n: number) =>
      n === 1
        ? "A 1 ajuste le falta el medidor o su distancia: su CO no se compara."
        : `A ${n} ajustes les falta el medidor o su distancia: su CO no se compara.`,
    stepsTitle: "Próximos pasos habituales, según el manual del fabricante",
    steps: [
      "Mira la toma de aire: filtro, tubo, nidos, nieve, hojas.",
      "Mira el escape: tubo aplastado o combado, agua en un punto bajo, hollín en la salida, uniones sin fugas.",
      "Déjalo un rato a plena potencia, al aire libre, si el manual lo dice.",
      "Rejilla, bujía y quemador: que se revisen, limpien o cambien según el manual del fabricante o por un profesional autorizado.",
      "Anota la limpieza, para que la comparación empiece de nuevo.",
    ],
  },
  supply: {
    title: "Combustible y batería de esta noche",
    elevation: "Altitud esta noche",
    hours: "Horas",
    share: "Potencia, % del rango",
    fuel: (litres: string, hours: string) => `${litres} L para ${hours} h`,
    heat: (kW: string) => `unos ${kW} kW para el interior`,
    tank: (hours: string) => `Un depósito lleno dura ${hours} h.`,
    noTank: "Con el tamaño del depósito, aquí diría cuántas horas dura.",
    battery: (at12: string, at24: string) => `${at12} Ah a 12 V, o ${at24} Ah a 24 V`,
    starts: "Cada arranque consume 8–12 A a 12 V, o 4–6 A a 24 V.",
    logged: (day: string, low: string, high: string) =>
      `Consumo según tu ajuste del ${day}, ${low} y ${high} Hz, y el combustible por pulso de este calefactor.`,
    retuned: (low: string, high: string, litres: string) =>
      `Ajustado al aire de esta noche, a unos ${low} y ${high} Hz, serían ${litres} L.`,
    dose: "Consumo según los ajustes iniciales para el aire de esta noche y tu combustible por pulso.",
    class:
      "Estimado según lo que suele gastar un calefactor de este tamaño en ese aire: con el combustible por pulso será más exacto.",
    assumes: (minutes: number) =>
      `Se supone: de 0,6 A a potencia mínima a 3,5 A a máxima con 12 V, 8–12 A en el arranque (práctica común, sin fuente) de ${minutes} minutos (valor nuestro); 9,9 kWh por litro, el 80 % para el interior; potencia constante.`,
    cannot: "Estas cifras no casan entre sí. Revisa altitud, horas y potencia.",
  },
  files: {
    title: "Exportar e importar",
    json: "Exportar todo (JSON, con fotos)",
    csv: "Exportar como CSV, sin fotos",
    note: "Los archivos contienen tus lugares y los recibos de los ajustes compartidos: quien tiene un recibo puede retirar ese ajuste. Guárdalos para ti.",
    bring: "Abrir un archivo: JSON o CSV",
    bringHint:
      "Lo que ya está se queda; si una entrada está dos veces, vale la cambiada más tarde.",
    brought: (added: number, changed: number, same: number) =>
      `${added} nuevas, ${changed} cambiadas, ${same} como estaban.`,
    refused: (reason: string) => `${reason}. No se ha importado nada.`,
    line: (line: number, reason: string) => `Línea ${line}: ${reason}. No se ha importado nada.`,
    empty: "El archivo está vacío",
    large: (MB: number) => `El archivo pasa de ${MB} MB`,
    notJson: "esto no es JSON legible",
    notLogbook: "El archivo es JSON, pero no una bitácora de esta página",
    newer:
      "El archivo es de una versión más nueva de esta página: recarga la página y vuelve a intentarlo",
    head: "la primera línea debe nombrar al menos las columnas kind, id y changed_at",
    badCsv:
      "esto no se puede leer como CSV: sobra o falta un campo, o unas comillas quedaron abiertas",
    kind: "kind debe ser heater, tune, cleaning o note",
    twice: (id: string) => `la id ${id} está dos veces`,
    noHeater: (id: string) => `su calefactor (${id}) no está ni en el archivo ni aquí`,
    field: (field: string, reason: string) => `${field}: ${reason}`,
  },
  cautions: {
    title: "Antes de tocar el calefactor",
    lines: [
      "Deja que termine de enfriarse; nunca le cortes la corriente en caliente.",
      "No repostes nunca con el calefactor caliente o en marcha.",
      "Tras cualquier trabajo, revísalo todo: uniones del escape, toma de aire y conductos de combustible.",
      "Fusible y cable de la medida que pide el fabricante.",
    ],
  },
};

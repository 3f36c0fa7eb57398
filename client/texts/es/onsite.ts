/** Words of the On site view, in Spanish. */
export const onsite: typeof import("../en/onsite.ts").onsite = {
  title: "En el sitio: encontrar el mínimo",
  intro:
    "Una búsqueda guiada en cada extremo de la potencia, con el ventilador como está: fijar, esperar, leer, hasta que el CO sea el más bajo. Todo se calcula aquí; no hace falta red, y cada pulsación se guarda.",
  notKept: "Este navegador no guarda lo que usted pulsa: al recargar se perdería la búsqueda.",
  prepare: {
    basis: "Lugar, aire, calefactor",
    nightWhy: "De la noche que viene: al final se ve cómo le va el ajuste.",
    air: "Aire ahora",
    temperatureNow: "Temperatura ahora",
    airNow:
      "Donde el calefactor toma el aire. Cuenta tanto como la altitud; vacía, se toma la de la atmósfera estándar.",
    start: (low, high) =>
      `La búsqueda empieza en estas frecuencias, donde el calefactor funciona, y busca cerca de ${low} Hz y ${high} Hz.`,
    before: "Como está fijado ahora",
    beforeWhy:
      "La búsqueda empieza aquí y avanza a pasos cortos. Si la deja, esto es lo que hay que volver a poner.",
    lowBefore: "Frecuencia de la bomba ahora, extremo bajo, Hz",
    highBefore: "Frecuencia de la bomba ahora, extremo alto, Hz",
    fanWhy:
      "Velocidades del ventilador como están ahora: la búsqueda solo cambia la bomba. Vacías, se toman las habituales de la clase.",
    step: "Paso más pequeño de la bomba, Hz",
    heater: "Calefactor en el diario",
    supply: "Tensión de alimentación, V (opcional)",
    meter: "Medidor junto al escape",
    meterWhy:
      "El tipo rellena lo que suelen mostrar tales medidores (práctica común, sin fuente): la hoja del medidor lo sabe mejor.",
    kind: "Tipo de medidor",
    resolution: "Diferencia más pequeña que muestra, ppm",
    floor: "No muestra nada por debajo de, ppm",
    floorHint:
      "0 si muestra cualquier cifra. Muchas alarmas de habitación no muestran nada por debajo de 30: eso no es 0.",
    ceiling: "No muestra nada por encima de, ppm",
    lag: "Lo lento que es: segundos hasta la mayor parte de un cambio",
    lagHint: "Basta una estimación: solo decide cuánto hay que esperar.",
    distance: "Distancia a la boca del escape, m",
    distanceHint: "Unos 0,3 m es práctica común (sin fuente). El mismo punto en cada lectura.",
    missing: "Esto hace falta.",
    range: (least, most) => `De ${least} a ${most}, por favor.`,
    ends: "El extremo alto debe quedar por encima del bajo.",
    cannot:
      "Con estas cifras no se puede calcular el ajuste inicial. Revise las velocidades y la presión.",
    fix: "Arriba queda algo por corregir.",
    begin: "Ir a la lista",
  },
  guards: (lean, rich) => `Límites: ${lean}–${rich} Hz.`,
  progress: {
    step: (step, most) => `Paso ${step} de ${most} como máximo.`,
    lean: {
      rose: "Más pobre: el CO subió ✓.",
      open: "Más pobre: aún sin subida.",
      "flame-out": "Más pobre: la llama se apagó.",
      limit: "Más pobre: límite alcanzado.",
    },
    rich: {
      rose: "Más rico: el CO subió ✓.",
      open: "Más rico: aún sin subida.",
      "flame-out": "Más rico: la llama se apagó.",
      limit: "Más rico: límite alcanzado.",
    },
  },
  checklist: {
    title: "Antes de encender",
    intro: "Mirar cada línea, y después marcarla.",
    checks: {
      air: "El vehículo está al aire libre, con las puertas abiertas, y nadie duerme en él.",
      alarm:
        "Dentro hay una alarma certificada de monóxido de carbono aparte, y se acaba de pulsar su botón de prueba. No es el medidor del escape.",
      exhaust:
        "El escape y la toma de aire están bien cerrados, libres y separados: el calefactor no aspira su propio escape.",
      meter:
        "El medidor no muestra nada al aire limpio, y está fijo cerca del escape, no dentro: fuera del chorro caliente, siempre en el mismo punto.",
      fuel: "Combustible para una hora a plena potencia; no repostar mientras algo esté caliente.",
      supply:
        "La alimentación mantiene su tensión con carga: una batería débil cambia el ventilador y la bomba.",
    },
    hot: "El escape se calienta hasta quemar la piel y prender hierba seca. Para parar, deje que el calefactor se enfríe solo: no le corte la corriente.",
    maker:
      "El manual del fabricante va primero. Algunas instalaciones homologadas no se pueden alterar en absoluto.",
    light: "El calefactor está encendido",
    tickAll: "Marque antes cada línea.",
  },
  warmUp: {
    title: "Calentamiento",
    why: "Que funcione en el extremo bajo. Las lecturas de un quemador frío no dicen nada.",
    left: "Faltan",
    over: "Caliente. Empiece por el extremo bajo.",
    begin: "Empezar el extremo bajo",
    already: "Ya está caliente",
  },
  step: {
    title: (end) => `${end}: paso siguiente`,
    titleWait: (end) => `${end}: esperar y leer`,
    settling: "Deje que la llama y el medidor se asienten.",
    set: "Fije la bomba en",
    keep: "La bomba sigue en",
    why: {
      start: "Empiece donde está ajustada la bomba ahora.",
      leaner: "Un poco más pobre.",
      richer: "Un poco más rico.",
      between: "Entre dos lecturas, donde el CO puede ser aún más bajo.",
      "on the way": "De camino, porque la bomba se mueve a pasos cortos.",
      confirm: "Confirmar: una lectura más donde la bomba va a quedarse.",
      spike: "El CO se ha disparado: vuelva atrás enseguida.",
      "flame-out":
        "De vuelta adonde funcionaba. La frecuencia a la que se apagó la llama es demasiado pobre: no se prueba más.",
      wait: "La cifra aún no está quieta: lea otra vez con la misma frecuencia.",
    },
    isSet: "Ya está fijada",
    thenWait: (span) => `Después espere ${span}.`,
    readIn: "Leer el medidor en",
    readNow: "Lea ahora el medidor",
    reading: "El medidor muestra, ppm",
    take: "Tomar la lectura",
    below: (floor) => `No muestra nada: menos de ${floor}`,
    above: (ceiling) => `Fuera de su escala: más de ${ceiling}`,
    still: "La cifra lleva medio minuto quieta",
    noReading: "Escriba lo que muestra el medidor, o pulse lo que no puede mostrar.",
    outOfScale: (ceiling) => `De 0 a ${ceiling} ppm, por favor.`,
    early:
      "Cuenta cuando la cifra está quieta: dos lecturas que coinciden, o una que usted ha observado.",
    out: "Se ha apagado la llama",
    undo: "Deshacer la última pulsación",
    leave: "Dejar la búsqueda",
    leaveSure: "Dejarla: mostrar qué hay que devolver",
    stay: "Seguir buscando",
    seconds: (n) => `${n} s`,
    minutes: (n) => `${n} min`,
  },
  chart: {
    title: "CO según la frecuencia de la bomba",
    x: "Frecuencia de la bomba, Hz",
    y: "CO en el medidor, ppm",
    label: "Gráfico de las lecturas: CO según la frecuencia de la bomba.",
    first: "Ninguna lectura aún.",
    lowest: (co, rate) => `Lo más bajo hasta ahora: ${co} ppm a ${rate} Hz.`,
    lowestBelow: (floor, rate) => `Lo más bajo hasta ahora: menos de ${floor} ppm a ${rate} Hz.`,
    next: (rate) => `siguiente: ${rate}`,
    keyLine: "lecturas, unidas",
    keyBetween: "fuera de aquí el CO es claramente más alto",
    keyNext: "siguiente",
    readings: "Lecturas",
    rate: "Bomba, Hz",
    co: "CO, ppm",
    time: "Tras fijar",
    flameOut: "llama apagada",
    belowIs: (floor) => `menos de ${floor}`,
    aboveIs: (ceiling) => `más de ${ceiling}`,
    settled: "vista quieta",
    none: "Ninguna aún.",
  },
  ended: {
    found: {
      title: (end) => `${end}: encontrado`,
      minimum: (rate, lower, upper) =>
        `El CO es más bajo cerca de ${rate} Hz: a ${lower} y a ${upper} Hz era claramente más alto.`,
    },
    "not bracketed": {
      title: (end) => `${end}: la mejor frecuencia leída, sin mínimo visto`,
      means:
        "No se vio subir el CO a ambos lados de esta frecuencia. Es la mejor de las leídas, no un mínimo medido: más allá el CO puede ser más bajo.",
      lean: {
        rose: () => "Más pobre: el CO subió.",
        "flame-out": () => "Más pobre: la llama se apaga antes de que suba el CO.",
        limit: (rate) =>
          `Más pobre: a ${rate} Hz, la última frecuencia dentro de los límites, el CO no había subido claramente. Si las velocidades, el lugar y el aire están bien escritos, este calefactor es distinto de la mayoría.`,
        open: (rate) =>
          `Más pobre: los pasos se acabaron a ${rate} Hz antes de que el CO subiera claramente.`,
      },
      rich: {
        rose: () => "Más rico: el CO subió.",
        "flame-out": () => "Más rico: la llama se apaga antes de que suba el CO.",
        limit: (rate) =>
          `Más rico: a ${rate} Hz, la última frecuencia dentro de los límites, el CO no había subido claramente. Si las velocidades, el lugar y el aire están bien escritos, este calefactor es distinto de la mayoría.`,
        open: (rate) =>
          `Más rico: los pasos se acabaron a ${rate} Hz antes de que el CO subiera claramente.`,
      },
      changed:
        "Las lecturas a esta frecuencia cambiaron por el camino: viento, calentamiento o un medidor que deriva. Por eso ninguna cuenta como mínimo.",
      now: "Por ahora puede usarla si la llama es estable.",
      further: "Para seguir buscando, empiece este extremo de nuevo: parte de aquí.",
    },
    "below floor": {
      title: (end) => `${end}: por debajo de lo que muestra este medidor`,
      means: (floor, lower, upper) =>
        lower === upper
          ? `A ${lower} Hz el CO queda por debajo del umbral de su medidor, ${floor} ppm.`
          : `De ${lower} a ${upper} Hz el CO queda por debajo del umbral de su medidor, ${floor} ppm.`,
      middle: "El centro de ese intervalo es una elección sensata, no un mínimo medido.",
      suggested:
        "No se vio hasta dónde llega ese intervalo. El ajuste inicial, o la frecuencia más próxima dentro de él, es una elección sensata, no un mínimo medido.",
      now: (floor) =>
        `Menos de ${floor} no es 0. Para un mínimo, empiece este extremo de nuevo con el medidor más cerca del escape, o con uno que muestre menos.`,
    },
    "above scale": {
      title: (end) => `${end}: fuera de la escala del medidor`,
      means: (ceiling) =>
        `Todas las lecturas quedan por encima de lo que muestra este medidor (${ceiling} ppm), así que no puede dar un mínimo. Deje la bomba en esta frecuencia, aleje el medidor del escape y empiece de nuevo. Si sigue así, haga revisar el calefactor.`,
    },
    goOn: "Seguir sin mínimo aquí",
  },
  found: {
    leave: "Deje la bomba en",
    shown: (co) => `Allí el medidor se asentó en ${co}.`,
    flat: (lower, upper) =>
      `De ${lower} a ${upper} Hz el CO es el mismo, hasta donde el medidor distingue.`,
    seat: {
      low: "La frecuencia elegida queda hacia su borde rico, donde una llama baja es más estable.",
      high: "La frecuencia elegida queda en el lado pobre de su centro, lejos del hollín.",
    },
    besideFlameOut: (rate) =>
      `A ${rate} Hz, apenas más pobre, la llama se apagó. Con viento o en una noche más fría puede apagarse también aquí: entonces ponga la bomba un paso más rica.`,
    practice:
      "Un CO final de menos de 30 ppm junto al escape es habitual, 7–15 ppm bueno (práctica común, sin fuente). Otro medidor u otro punto muestra otra cifra.",
    nextHigh: "Seguir con el extremo alto",
    nextCheck: "Seguir con las comprobaciones",
    again: "Empezar este extremo de nuevo",
  },
  check: {
    title: { middle: "Comprobación en el medio", full: "Comprobación a plena potencia" },
    why: {
      middle:
        "El mando va en línea recta entre los extremos: a medio camino la bomba y el ventilador también están a la mitad, y el CO queda entre los de ambos extremos.",
      full: "Una vez más a plena potencia: el CO debe volver a donde se asentó el extremo alto.",
    },
    setTo: {
      middle: "Fije la potencia a medio camino entre los extremos",
      full: "Fije la plena potencia",
    },
    is: (pump, fan) => `allí la bomba va a unos ${pump} Hz, el ventilador a ${fan} rpm`,
    expect: (co, upper) => `Se esperan unos ${co} ppm; más de ${upper} es malo.`,
    expectBelow: (upper) => `Más de ${upper} ppm es malo.`,
    good: (co) => `${co}: como cabía esperar por los extremos.`,
    unseen: "El medidor no muestra nada aquí: nada habla en contra, y nada a favor.",
    poor: (co) => `${co}: claramente más que en los extremos.`,
    poorMeans: {
      middle:
        "O el mando no va recto entre los extremos, o un extremo no está donde se ajustó. No mueva un extremo para compensarlo: lea antes otra vez ambos extremos. Si el medio sigue mal, use las potencias cercanas a los extremos y haga revisar el calefactor.",
      full: "El extremo alto no se mantiene: no se había asentado, o algo ha cambiado. Léalo otra vez, o empiece el extremo alto de nuevo en otro momento. Si sigue mal, haga revisar el calefactor.",
    },
    readAgain: "Leer otra vez",
    skip: "Dejar esta comprobación",
    next: "Seguir a plena potencia",
    finish: "Terminar",
    skipped: "sin hacer",
  },
  relight: {
    title: "La llama está apagada",
    cool: "Deje que el calefactor se enfríe solo. No le corte la corriente. El escape está caliente; el combustible sin quemar puede humear.",
    richer: (rate) => `Después fije la bomba más rica, en ${rate} Hz, y encienda otra vez.`,
    same: "Después encienda otra vez.",
    rule: (left) =>
      left === 1
        ? "Queda un intento; después, solo el manual del fabricante."
        : `${left} intentos de encendido como mucho; después, solo el manual del fabricante.`,
    attempt: "Se ha enfriado: enciendo ahora",
    burns: "Arde",
    noLight: "No enciende",
  },
  stopped: {
    alarm: {
      title: "Quédense fuera",
      lines: [
        "Nadie vuelve a entrar: ni por la causa, ni por el calefactor, ni por las cosas.",
        "Dolor de cabeza, mareo, náuseas, o falta alguien: dígalo al llamar. Vaya al médico aunque se pase.",
        "Apague el calefactor solo si puede hacerlo desde fuera. Deje que se enfríe solo.",
        "Nadie lo enciende ni duerme allí hasta que el aire esté limpio, la alarma calle y alguien que conozca estos calefactores haya encontrado la causa.",
      ],
      number: "Ver el número de emergencias",
      sweepEnded: "La alarma terminó la búsqueda.",
      later: "Más tarde: devolver los ajustes",
      onlyThen: "Solo cuando el aire esté limpio y se haya encontrado la causa.",
      areBack: "Ya están devueltos",
      endSweep: "Terminar esta búsqueda",
      notYet: "Todavía no",
      mistaken: "Se pulsó por error",
      mistakenSure: "Sí: sin alarma, y dentro no se leyó nada",
    },
    flame: {
      title: "Ningún intento más",
      lines: [
        "La llama se ha apagado, o no ha vuelto, demasiadas veces. Deje que el calefactor se enfríe solo; no le corte la corriente.",
        "Desde aquí siga el manual del fabricante, o haga revisar el calefactor.",
      ],
    },
    abort: {
      title: "La búsqueda queda dejada",
      lines: [
        "Nada se guarda como ajuste. Deje que el calefactor se asiente, o se enfríe solo; no le corte la corriente.",
      ],
    },
    putBack: "Devolver los ajustes",
    fanKept:
      "Como usted los indicó antes de la búsqueda. Esta solo cambió la bomba: el ventilador está como estaba.",
    fan: "Ventilador, rpm",
    pump: "Bomba, Hz",
    resume: "Volver a la búsqueda",
    anew: "Empezar otra búsqueda",
    anewSure: "Sí: olvidar esta",
  },
  done: {
    title: "Ambos extremos encontrados",
    titleSet: "Ambos extremos ajustados",
    end: "Extremo",
    pump: "Bomba, Hz",
    fan: "Ventilador, rpm",
    co: "CO final, ppm",
    minimum: "CO más bajo entre, Hz",
    none: "ningún mínimo visto",
    settled: "Lecturas",
    before: "antes, Hz",
    checks: "Comprobaciones",
    logged: "Guardado en el diario.",
    notLogged: "El diario no pudo guardarlo: puede que el almacenamiento esté lleno o prohibido.",
    retry: "Probar otra vez",
    openLogbook: "Abrir el diario",
    recheck:
      "Vale para este calefactor, este lugar, este aire. Compruébelo otra vez tras 500 m o 15 °C (valores de trabajo nuestros).",
    night: {
      title: "En el aire de la noche que viene",
      temperature: "Temperatura nocturna",
      type: "Escriba cuánto frío hará: el aire frío es más denso, y los mismos ajustes van más pobres en él.",
      air: (night, size, now) =>
        `A ${night} el aire es un ${size} que a los ${now} en que usted ajustó.`,
      same: (night, now) =>
        `A ${night} el aire es tan denso como a los ${now} en que usted ajustó, hasta medio por ciento.`,
      denser: (pct) => `${pct} % más denso`,
      thinner: (pct) => `${pct} % menos denso`,
      assumed: (now) =>
        `Usted no dio la temperatura al ajustar: se toman los ${now} de la atmósfera estándar, así que es una estimación.`,
      asIs: "Si se deja así",
      pump: "Poner la bomba en, Hz",
      fan: "O el ventilador en, rpm",
      fanUsual: "O el ventilador",
      richer: (pct) => `${pct} % más rico`,
      leaner: (pct) => `${pct} % más pobre`,
      none: "sin cambio",
      faster: (pct) => `${pct} % más rápido`,
      slower: (pct) => `${pct} % más lento`,
      fanEnds: "más de lo que puede",
      unchanged: "se queda",
      stay: (rich, lean) =>
        `Puede quedarse así: hasta un ${rich} % más rico o un ${lean} % más pobre que lo mejor es nuestro propio margen de trabajo. Para tener el CO más bajo también de noche, ponga una de estas cosas:`,
      tight: (room, rich, lean) =>
        `Puede quedarse así, pero justo: queda un ${room} % hasta el borde de nuestro propio margen de trabajo (de un ${rich} % más rico a un ${lean} % más pobre que lo mejor). Mejor ponga una de estas cosas en cada extremo:`,
      set: (rich, lean) =>
        `Demasiado: más de un ${rich} % más rico o un ${lean} % más pobre que lo mejor (nuestro propio margen de trabajo). Antes de la noche, ponga una de estas cosas en cada extremo:`,
      well: "Déjelo como está.",
      worked:
        "Calculado con la densidad del aire, no medido. Si puede, lea el medidor otra vez al aire libre con el frío, y vuelva a los ajustes de ahora cuando haga menos frío.",
    },
    shareTitle: "Compartir este ajuste",
    shareIntro: "Como está arriba, con medidor, aire y mes. No se escribe nada otra vez.",
    sharePlace:
      "Enviar también el lugar, como el centro de una celda del mapa de unos 250 km²; nada más preciso sale de este navegador.",
    wrong: "Así no se puede compartir:",
    inShare: "Verlo en Compartir",
    receiptKept: "El recibo se guarda con la entrada del diario y en Compartir.",
    receiptNotKept: "Este navegador no pudo guardar el recibo. Cópielo ahora:",
    anew: "Empezar otra búsqueda",
    keepShown: "Seguir viendo esta",
    heaterName: (kW) => `Calefactor de ${kW} kW`,
    span: (lower, upper) => `${lower} a ${upper}`,
    over: "fuera de la escala del medidor",
    verdicts: {
      good: "como se esperaba",
      high: "como se esperaba, pero alto",
      poor: "malo",
      unseen: "no se ve",
    },
  },
};

import { format } from "../../units.ts";

/** Working without a network, in Spanish. */
export const offline: typeof import("../en/offline.ts").offline = {
  title: "Sin red",
  restsOn: (version: string, age: string) => `Cálculo ${version}, ${age}.`,
  unable:
    "Este navegador no guarda nada para usar sin red (hace falta HTTPS y permiso de almacenamiento).",
  waiting: "Lo que necesitas sin red se guarda cuando esta página lleva un momento abierta.",
  saveData:
    "Tu dispositivo pide ahorrar datos, así que el mapa y los lugares solo se guardan si tú lo dices.",
  keepNow: "Guardarlos ahora",
  keeping: (done: number, of: number) =>
    `Guardando el mapa y los lugares: ${done} de ${of} archivos.`,
  cleared: "Este navegador había borrado lo guardado; se está descargando otra vez.",
  wiped:
    "Este navegador acaba de borrar lo que la página guardaba: se han perdido los ajustes en espera y los recibos que no estén guardados en otro sitio. Lo que se ve en pantalla sigue hasta que la dejes.",
  kept: `Guardado en este navegador: ajustes iniciales, gráficos, lugares de más de ${format(15_000)} habitantes, altitudes y el mapa de lejos.`,
  full: "Al navegador no le queda sitio para el mapa y los lugares. Los ajustes iniciales funcionan sin red; libera espacio e inténtalo de nuevo.",
  interrupted: "Página, mapa y lugares aún no están todos guardados: se cortó la conexión.",
  retry: "Intentar de nuevo",
  region: "Todos los lugares de un país",
  regionHint:
    "También los más pequeños, y el mapa un paso más cerca. Se queda hasta que lo quites.",
  size: (places: string, megabytes: string) => `${places} lugares, ${megabytes} MB`,
  save: "Guardar el país",
  saving: "Guardando …",
  saved: "Guardado",
  notSaved: "No se pudo guardar: se cortó la conexión.",
  remove: (country: string) => `Quitar ${country}`,
  room: (used: string) => `En uso: unos ${used} MB.`,
  newRelease: "Hay lista una versión nueva de esta página.",
  newReleaseElsewhere:
    "Está en uso una versión nueva de esta página. Lo que esta pestaña aún no ha abierto puede faltar hasta que la vuelvas a cargar; lo escrito se queda.",
  oldPage:
    "Una parte de esta página ya no está: el atlas tiene una versión más nueva. Lo escrito se queda.",
  reload: "Volver a cargar",
  notKept: (name) =>
    `«${name}» no está entre los lugares guardados en este navegador. Escribe la altitud; cuando vuelvas a tener red, guarda el país en «Sin red».`,
  noPlacesKept: "Este navegador aún no tiene lugares guardados. Escribe la altitud.",
  placesCredit: "Lugares y altitudes: GeoNames, CC BY 4.0.",
  waits:
    "Guardado en este navegador: se envía solo, una vez, en cuanto haya conexión con el atlas y esta página esté abierta.",
  waitingTitle: "Pendiente de envío",
  waitingCount: (n: number) =>
    n === 1 ? "1 ajuste espera su envío." : `${n} ajustes esperan su envío.`,
  arrived: (n: number) =>
    n === 1
      ? "El ajuste que esperaba ha llegado; su recibo está en la lista de «Compartir»."
      : `${n} ajustes que esperaban han llegado; sus recibos están en la lista de «Compartir».`,
  sendNow: "Enviar ahora",
  mend: "Devolverlo al formulario",
  discard: "Descartarlo",
  discardSure: "Descartar para siempre",
};

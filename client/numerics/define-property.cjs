// Every browser that runs this page has it; the library's stand-in for those that do not is left out.
module.exports = Object.defineProperty;

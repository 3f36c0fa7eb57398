// Every browser that runs this page has it; the library's test for it is left out.
module.exports = Uint16Array;

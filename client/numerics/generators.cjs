// Stands in for the numerics library's test for generators by eval, which the Content-Security-Policy forbids.
module.exports = () => true;

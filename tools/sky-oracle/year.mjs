// Times a year of minutes of the Sun from the npm package astronomy-engine, topocentric and without refraction, and prints the median of three rounds in
// seconds, then every 997th position as "minute azimuth elevation". Run by bench/run.
import * as Astronomy from 'astronomy-engine';

const [latitude, longitude, elevation, start, minutes] = process.argv.slice(2).map(Number);
const observer = new Astronomy.Observer(latitude, longitude, elevation);
const azimuths = new Float64Array(minutes);
const elevations = new Float64Array(minutes);
const round = () => {
  const begun = process.hrtime.bigint();
  for (let i = 0; i < minutes; i++) {
    const date = new Date(start + i * 60000);
    const equator = Astronomy.Equator(Astronomy.Body.Sun, date, observer, true, true);
    const horizon = Astronomy.Horizon(date, observer, equator.ra, equator.dec);
    azimuths[i] = horizon.azimuth;
    elevations[i] = horizon.altitude;
  }
  return Number(process.hrtime.bigint() - begun) / 1e9;
};

const times = [round(), round(), round()].sort((a, b) => a - b);
console.log(times[1]);
for (let i = 0; i < minutes; i += 997) {
  console.log(i, azimuths[i], elevations[i]);
}

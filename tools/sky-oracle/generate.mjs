// A random sample of Sun and Moon positions from the npm package astronomy-engine 2.1.19 (MIT), without refraction, topocentric.
// Run: npm install && npm start. The seed is fixed, so the output is always the same.
import * as Astronomy from 'astronomy-engine';

let state = 20240620;
const random = () => {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  return state / 4294967296;
};

console.log('# Source: npm astronomy-engine 2.1.19, written by tools/sky-oracle. Degrees; azimuth from north through east; no refraction.');
console.log('utc,latitude,longitude,elevation_m,sun_azimuth,sun_elevation,moon_azimuth,moon_elevation,moon_elongation,moon_lit');
const first = Date.UTC(1950, 0, 2);
const last = Date.UTC(2050, 11, 30);
for (let i = 0; i < 400; i++) {
  const date = new Date(Math.round((first + random() * (last - first)) / 1000) * 1000);
  const latitude = Number((Math.asin(2 * random() - 1) * 180 / Math.PI).toFixed(4));
  const longitude = Number((random() * 360 - 180).toFixed(4));
  const elevation = Math.round(random() * 3000);
  const observer = new Astronomy.Observer(latitude, longitude, elevation);
  const place = body => {
    const equator = Astronomy.Equator(body, date, observer, true, true);
    const horizon = Astronomy.Horizon(date, observer, equator.ra, equator.dec);
    return [horizon.azimuth.toFixed(5), horizon.altitude.toFixed(5)];
  };
  const elongation = Astronomy.MoonPhase(date);
  const lit = Astronomy.Illumination(Astronomy.Body.Moon, date).phase_fraction;
  console.log([date.toISOString(), latitude, longitude, elevation, ...place('Sun'), ...place('Moon'), elongation.toFixed(5), lit.toFixed(6)].join(','));
}

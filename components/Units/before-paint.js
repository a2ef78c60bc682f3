{
  const key = 'sixteenths.units';
  const root = document.documentElement;
  let units = new URLSearchParams(location.search).get('units');
  try {
    if (units === 'us' || units === 'metric') localStorage.setItem(key, units);
    units = localStorage.getItem(key) ?? units;
  } catch {}
  root.dataset.units = units === 'metric' ? 'metric' : 'us';
  window.showUnits = () => {
    for (const box of document.querySelectorAll('input[data-us]')) {
      const { us, metric } = box.dataset;
      const untouched = box.value === us || box.value === metric;
      if (untouched && !box.closest('[data-alive]')) box.value = box.dataset[root.dataset.units];
    }
  };
}

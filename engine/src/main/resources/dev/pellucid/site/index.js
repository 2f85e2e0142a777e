(function () {
  var search = document.getElementById('search');
  var species = document.getElementById('species');
  var standing = document.getElementById('standing');
  var told = document.getElementById('told');
  var rows = Array.prototype.slice.call(document.querySelectorAll('tr[data-words]'));
  function show() {
    var words = search.value.toLowerCase().split(/\s+/).filter(Boolean);
    var all = {};
    var shown = {};
    rows.forEach(function (row) {
      var kind = row.getAttribute('data-kind');
      var feed = kind === 'feeds';
      var hit = words.every(function (word) { return row.getAttribute('data-words').indexOf(word) >= 0; });
      if (feed) {
        hit = hit && (!species.value || row.getAttribute('data-species') === species.value)
          && (!standing.value || row.getAttribute('data-standing') === standing.value);
      }
      all[kind] = (all[kind] || 0) + 1;
      shown[kind] = (shown[kind] || 0) + (hit ? 1 : 0);
      row.hidden = !hit;
    });
    told.textContent = Object.keys(all).map(function (kind) {
      return shown[kind] + ' of ' + all[kind] + ' ' + kind + ' shown';
    }).join(', ');
  }
  function fromAddress() {
    var asked = location.hash.slice(1);
    try { asked = decodeURIComponent(asked); } catch (notCoded) { /* taken as it stands */ }
    if (asked !== search.value) {
      search.value = asked;
    }
    show();
  }
  document.getElementById('filters').hidden = false;
  search.addEventListener('input', function () {
    location.replace('#' + encodeURIComponent(search.value));
    show();
  });
  species.addEventListener('change', show);
  standing.addEventListener('change', show);
  window.addEventListener('hashchange', fromAddress);
  document.getElementById('filters').addEventListener('submit', function (event) { event.preventDefault(); });
  fromAddress();
})();

(function () {
  var search = document.getElementById('search');
  var species = document.getElementById('species');
  var standing = document.getElementById('standing');
  var told = document.getElementById('told');
  var rows = Array.prototype.slice.call(document.querySelectorAll('tr[data-words]'));
  function show() {
    var words = search.value.toLowerCase().split(/\s+/).filter(Boolean);
    var feeds = 0;
    var shown = 0;
    rows.forEach(function (row) {
      var feed = row.hasAttribute('data-standing');
      var hit = words.every(function (word) { return row.getAttribute('data-words').indexOf(word) >= 0; });
      if (feed) {
        hit = hit && (!species.value || row.getAttribute('data-species') === species.value)
          && (!standing.value || row.getAttribute('data-standing') === standing.value);
        feeds++;
        shown += hit ? 1 : 0;
      }
      row.hidden = !hit;
    });
    told.textContent = shown + ' of ' + feeds + ' feeds shown';
  }
  function fromAddress() {
    var asked = decodeURIComponent(location.hash.slice(1));
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

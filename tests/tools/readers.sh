#!/bin/bash
# Makes sure that the outside readers which hold the output are here: Debian packages, installed when missing
# and we may, else named; and a second version of Node, which must write the same bytes. The tests fail without them.
set -euo pipefail

# Its own folder, for the package is made for one kind of machine alone.
other=22.23.3
folder=tests/tools/other-node
if [ "$("$folder/node_modules/other-node/bin/node" --version 2>/dev/null)" != "v$other" ]; then
  package=node-$(node -p 'process.platform + "-" + process.arch')@$other
  npm install --prefix "$folder" --no-save --no-audit --no-fund --silent "other-node@npm:$package"
fi

missing=()
need() { command -v "$1" >/dev/null || missing+=("$2"); }
need admesh admesh
need qpdf qpdf
need mutool mupdf-tools
need pdftotext poppler-utils
need xmllint libxml2-utils
need rsvg-convert librsvg2-bin
need librecad librecad
need slic3r slic3r
need g++ g++
[ -e /usr/include/lib3mf ] || missing+=(lib3mf-dev)
need zsh zsh
need fish fish
/usr/bin/python3 -c 'import ezdxf' 2>/dev/null || missing+=(python3-ezdxf)
/usr/bin/python3 -c 'import openpyxl' 2>/dev/null || missing+=(python3-openpyxl)
[ -e /usr/share/fonts/truetype/dejavu/DejaVuSans.ttf ] || missing+=(fonts-dejavu-core)
[ -x /usr/bin/chromium ] || missing+=(chromium)
[ ${#missing[@]} -eq 0 ] && exit 0

if command -v apt-get >/dev/null && [ "$(id -u)" -eq 0 ]; then
  export DEBIAN_FRONTEND=noninteractive
  apt-get update -qq
  apt-get install -y -qq --no-install-recommends "${missing[@]}"
else
  echo "The tests read the output back with other programs, and these Debian packages are missing:" >&2
  echo "    sudo apt-get install ${missing[*]}" >&2
  exit 1
fi

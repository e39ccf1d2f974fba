#!/bin/bash
# Makes sure that the outside readers which hold the output are here: Debian packages, installed when missing
# and we may, else named. The tests fail without them.
set -euo pipefail

missing=()
command -v admesh >/dev/null || missing+=(admesh)
/usr/bin/python3 -c 'import ezdxf' 2>/dev/null || missing+=(python3-ezdxf)
/usr/bin/python3 -c 'import openpyxl' 2>/dev/null || missing+=(python3-openpyxl)
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

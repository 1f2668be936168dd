#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Has a general-purpose BagIt reader from the npm registry, bagit-fs, read a filing: it must find each
# payload file in the manifest and agree with its digest, and refuse a file in which one byte differs.
# Needs unzip, node and npm; fetches the package into a temporary folder, so no other test calls this.
# What it printed stands in bag_reader.txt.
# Usage: bash tests/published/bag_reader.sh FILING.zip
set -euo pipefail
filing=$(realpath "$1")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"
unzip -q "$filing" -d bag
# RFC 8493 lets one or more blanks part digest and name. We write two, as sha256sum -c likes them; this
# reader knows one.
sed -i 's/^\([0-9a-f]*\)  /\1 /' bag/*/manifest-sha256.txt
npm install --silent --no-save --prefix "$work" bagit-fs@1.1.1 > /dev/null
cat > read.js <<'END'
const bag = require('bagit-fs')(process.argv[2], 'sha256');
bag.readManifest((error, entries) => {
  if (error) throw error;
  const named = entries.filter((entry) => entry.name);  // it takes the end of the last line for one
  if (named.length === 0) throw new Error('an empty manifest');
  for (const entry of named) {
    const name = entry.name.replace(/^data\//, '');
    bag.readFile(name, (refused, bytes) => {
      console.log(entry.name + ': ' + (refused ? 'refused, ' + refused.message : 'agrees'));
      if (refused) process.exitCode = 1;
    });
  }
});
END
echo "as filed"
node read.js bag/*/
echo "one byte of data/filing.json changed"
printf '\x20' | dd of="$(echo bag/*/data/filing.json)" bs=1 seek=10 conv=notrunc status=none
if node read.js bag/*/; then
  echo "The reader took a changed file." >&2
  exit 1
fi
